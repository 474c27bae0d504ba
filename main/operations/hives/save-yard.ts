import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Yard } from '../../../shared/model/yard.ts';
import type { Desk } from '../operation.ts';

/** Writes a yard, new or known; two yards never share a name. */
export function saveYard({ workbook }: Desk, yard: Yard): Result<Yard, Refusal> {
  return workbook.change({ did: 'save-yard', yard: yard.name }, ({ yards }) => {
    const other = yards.where({ name: yard.name })[0];
    if (other && other.id !== yard.id) return refuse({ kind: 'yard-name-in-use', field: 'name', name: yard.name });
    if (yards.get(yard.id)) yards.update(yard);
    else yards.insert(yard);
    return ok(yard);
  });
}
