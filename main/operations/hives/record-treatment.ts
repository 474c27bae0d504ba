import type { z } from 'zod';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { RecordTreatment } from '../../../shared/contract/stock.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';

type Treated = z.infer<typeof RecordTreatment>;

/** Writes a treatment down as it was done; the same id again corrects it. What is allowed is for label and law to say. */
export function recordTreatment({ workbook }: Desk, treatment: Treated): Result<Treated, Refusal> {
  const hive = workbook.tables.colonies.get(treatment.colonyId)?.code ?? '';
  return workbook.change({ did: 'record-treatment', hive }, ({ colonies, treatments }) => {
    if (!colonies.get(treatment.colonyId)) return refuse({ kind: 'hive-missing', field: 'colonyId' });
    const { fromOn, toOn } = treatment;
    if (toOn !== null && toOn < fromOn) return refuse({ kind: 'treatment-turned-round', field: 'toOn', fromOn });
    if (treatments.get(treatment.id)) treatments.update(treatment);
    else treatments.insert(treatment);
    return ok(treatment);
  });
}
