import { z } from 'zod';
import { IdField, SeasonField } from './fields.ts';

/** A paper made from records that may be corrected later, and of what it was made. */
export const NotedPaper = z.discriminatedUnion('paper', [
  z.object({ paper: z.literal('queen-card'), queenId: IdField }),
  z.object({ paper: z.literal('hive-page'), colonyId: IdField }),
  /** Null = the hives of all yards. */
  z.object({ paper: z.literal('inspector-pages'), yardId: IdField.nullable(), year: SeasonField }),
  z.object({ paper: z.literal('season-report'), season: SeasonField }),
]);
export type NotedPaper = z.infer<typeof NotedPaper>;

/** How a paper is called: number of the queen, code of the hive, name of the yard (null = all), and the year or season. */
export interface PaperName {
  readonly paper: NotedPaper['paper'];
  readonly name: string | null;
  readonly year: number | null;
}
