import type { z } from 'zod';
import type { ListFeedings } from '../../../shared/contract/feeding.ts';
import type { Feeding } from '../../../shared/model/feeding.ts';
import type { Desk } from '../operation.ts';

/** What one hive or mating box was fed, newest first. */
export const listFeedings = (
  { workbook: { tables } }: Desk,
  { place, id }: z.infer<typeof ListFeedings>,
): readonly Feeding[] =>
  tables.feedings
    .where(place === 'hive' ? { colonyId: id } : { boxId: id })
    .toSorted((a, b) => (a.fedOn < b.fedOn ? 1 : -1));
