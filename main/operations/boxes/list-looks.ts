import type { z } from 'zod';
import type { ListLooks } from '../../../shared/contract/boxes.ts';
import type { BoxLook } from '../../../shared/model/look.ts';
import type { Desk } from '../operation.ts';

/** The looks into one box, newest first. */
export const listLooks = ({ workbook: { tables } }: Desk, { boxId }: z.infer<typeof ListLooks>): readonly BoxLook[] =>
  tables.boxLooks.where({ boxId }).toSorted((a, b) => (a.lookedOn < b.lookedOn ? 1 : -1));
