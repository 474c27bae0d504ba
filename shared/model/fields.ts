import { z } from 'zod';
import { isIsoDay } from '../kernel/day.ts';

/** The pieces every record is built from; limits live here once and the forms read them from the schema. */
export const IdField = z.string().regex(/^[A-Za-z0-9_-]{1,64}$/);
export const IsoDayField = z.string().refine(isIsoDay, 'not a calendar day');
/** Short enough to say across a yard and to print large on a label: H12, K07. */
export const CodeField = z.string().trim().min(1).max(12);
export const NameField = z.string().trim().min(1).max(60);
export const NoteField = z.string().trim().max(2000);
export const SeasonField = z.int().min(1950).max(2200);
/** Cells on one bar or in one count. A frame holds about 60; anything above 200 is a slip of the finger. */
export const CELLS_LIMIT = 200;
export const CellsField = z.int().min(0).max(CELLS_LIMIT);
