import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { HiveLook } from '../../../shared/model/look.ts';
import type { Tables } from '../../workbook/workbook.ts';
import type { Desk } from '../operation.ts';

/** Writes a look into a hive; the same id again corrects it. */
export function recordHiveLook({ workbook }: Desk, look: HiveLook): Result<HiveLook, Refusal> {
  const step = ({ colonies }: Tables) =>
    ({ did: 'record-hive-look', hive: colonies.get(look.colonyId)?.code ?? '', on: look.lookedOn }) as const;
  return workbook.change(step, ({ colonies, hiveLooks }) => {
    if (!colonies.get(look.colonyId)) return refuse({ kind: 'hive-missing', field: 'colonyId' });
    if (hiveLooks.get(look.id)) hiveLooks.update(look);
    else hiveLooks.insert(look);
    return ok(look);
  });
}
