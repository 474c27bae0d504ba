import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Colony } from '../../../shared/model/colony.ts';
import type { Desk } from '../operation.ts';

/** Writes a hive, new or known; two hives never share a code. */
export function saveHive({ workbook }: Desk, colony: Colony): Result<Colony, Refusal> {
  return workbook.change({ did: 'save-hive', hive: colony.code }, ({ colonies, yards }) => {
    const other = colonies.where({ code: colony.code })[0];
    if (other && other.id !== colony.id) return refuse({ kind: 'hive-code-in-use', field: 'code', code: colony.code });
    if (colony.yardId !== null && !yards.get(colony.yardId)) return refuse({ kind: 'yard-not-found', field: 'yardId' });
    if (colonies.get(colony.id)) colonies.update(colony);
    else colonies.insert(colony);
    return ok(colony);
  });
}
