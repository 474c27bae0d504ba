import type { z } from 'zod';
import type { RemoveHiveLook } from '../../../shared/contract/hives.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { HiveLook } from '../../../shared/model/look.ts';
import type { Desk } from '../operation.ts';

/** Takes a look out that was typed by mistake, or into the wrong hive. */
export function removeHiveLook(
  { workbook, today }: Desk,
  { lookId }: z.infer<typeof RemoveHiveLook>,
): Result<HiveLook, Refusal> {
  const { tables } = workbook;
  const look = tables.hiveLooks.get(lookId);
  const hive = look && tables.colonies.get(look.colonyId);
  const on = look?.lookedOn ?? isoOfDay(today);
  return workbook.change({ did: 'remove-hive-look', hive: hive?.code ?? '', on }, ({ hiveLooks }) => {
    if (!look) return refuse({ kind: 'look-missing' });
    hiveLooks.remove(lookId);
    return ok(look);
  });
}
