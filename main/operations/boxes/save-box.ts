import type { BoxesChanged } from '../../../shared/contract/boxes.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { MatingBox } from '../../../shared/model/mating-box.ts';
import { BoxReader } from '../box-lines.ts';
import type { Desk } from '../operation.ts';

/** Changes what a box is called, where it stands, its place in the walk, its type or its note. */
export function saveBox(desk: Desk, box: MatingBox): Result<BoxesChanged, Refusal> {
  return desk.workbook.change({ did: 'save-box', box: box.code }, (tables) => {
    if (!tables.boxes.get(box.id)) return refuse({ kind: 'box-not-found', field: 'boxId', code: box.code });
    const other = tables.boxes.where({ code: box.code })[0];
    if (other && other.id !== box.id) return refuse({ kind: 'box-code-taken', field: 'codes', code: box.code });
    if (box.yardId !== null && !tables.yards.get(box.yardId))
      return refuse({ kind: 'yard-not-found', field: 'yardId' });
    tables.boxes.update(box);
    return ok({ boxes: [new BoxReader(tables, desk.today).line(box)], notices: [] });
  });
}
