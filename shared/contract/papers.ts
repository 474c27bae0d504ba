import { z } from 'zod';
import { IdField, SeasonField } from '../model/fields.ts';

/** On which paper, and whether in large print. */
export const PaperChoice = z.object({ paper: z.enum(['a4', 'letter']), large: z.boolean() });

export const PrintQueenCard = PaperChoice.extend({ queenId: IdField });
export const PrintHivePage = PaperChoice.extend({ colonyId: IdField });
/** Null = the hives of all yards. */
export const PrintInspectorPages = PaperChoice.extend({ yardId: IdField.nullable(), year: SeasonField });
export const PrintKeyCard = PaperChoice;
export const PrintGlossary = PaperChoice;
