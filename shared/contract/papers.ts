import { z } from 'zod';
import type { IsoDay } from '../kernel/day.ts';
import { IdField, SeasonField } from '../model/fields.ts';
import type { NotedPaper, PaperName } from '../model/noted-paper.ts';

/** On which paper, and whether in large print. */
export const PaperChoice = z.object({ paper: z.enum(['a4', 'letter']), large: z.boolean() });

export const PrintQueenCard = PaperChoice.extend({ queenId: IdField });
export const PrintHivePage = PaperChoice.extend({ colonyId: IdField });
/** Null = the hives of all yards. */
export const PrintInspectorPages = PaperChoice.extend({ yardId: IdField.nullable(), year: SeasonField });
export const PrintKeyCard = PaperChoice;
export const PrintGlossary = PaperChoice;

/** A paper that went to the printer, and whether what it says was changed since. */
export interface PrintedPaper extends PaperName {
  readonly of: NotedPaper;
  readonly printedOn: IsoDay;
  readonly changed: boolean;
}
