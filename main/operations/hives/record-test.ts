import type { z } from 'zod';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { RecordTest } from '../../../shared/contract/stock.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';

type Test = z.infer<typeof RecordTest>;

/** A hygiene test, a count of mites or a weight of honey; the same id again corrects it. */
export function recordTest({ workbook }: Desk, test: Test): Result<Test, Refusal> {
  const hive = workbook.tables.colonies.get(test.colonyId)?.code ?? '';
  return workbook.change({ did: 'record-test', hive }, ({ colonies, stockTests }) => {
    if (!colonies.get(test.colonyId)) return refuse({ kind: 'hive-missing', field: 'colonyId' });
    const refusal = countRefusal(test);
    if (refusal) return refuse(refusal);
    if (stockTests.get(test.id)) stockTests.update(test);
    else stockTests.insert(test);
    return ok(test);
  });
}

/** A share needs what it is a share of, and no more cells are cleared than were tested. */
function countRefusal({ kind, counted, outOf }: Test): Refusal | null {
  if (kind === 'honey') return null;
  if (outOf === null) return { kind: 'out-of-needed', field: 'outOf' };
  const ofCells = kind === 'pin-test' || kind === 'freeze-test';
  return ofCells && counted > outOf ? { kind: 'more-cleared-than-tested', field: 'counted', counted, outOf } : null;
}
