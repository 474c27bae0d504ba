import type { z } from 'zod';
import type { AddBoxes, BoxesChanged } from '../../../shared/contract/boxes.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { readBoxCodes } from '../../../shared/kernel/box-codes.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { BoxReader } from '../box-lines.ts';
import type { Desk } from '../operation.ts';

/** Adds boxes by their codes, one or a span, after the last in walking order. All of them or none. */
export function addBoxes(desk: Desk, input: z.infer<typeof AddBoxes>): Result<BoxesChanged, Refusal> {
  const codes = readBoxCodes(input.codes);
  if (codes === null) return refuse({ kind: 'box-codes-unreadable', field: 'codes', text: input.codes });
  if (input.ids.length < codes.length) return refuse({ kind: 'wrong-number-of-ids', needed: codes.length });
  return desk.workbook.change({ did: 'add-boxes', boxes: input.codes }, (tables) => {
    const taken = codes.find((code) => tables.boxes.where({ code }).length > 0);
    if (taken !== undefined) return refuse({ kind: 'box-code-taken', field: 'codes', code: taken });
    if (input.yardId !== null && !tables.yards.get(input.yardId))
      return refuse({ kind: 'yard-not-found', field: 'yardId' });
    const last = Math.max(0, ...tables.boxes.all().map((box) => box.walkOrder));
    const { yardId, row, boxType } = input;
    codes.forEach((code, index) => {
      const id = input.ids[index] ?? desk.ids.next();
      tables.boxes.insert({ id, code, yardId, row, boxType, walkOrder: last + 1 + index, note: null, retiredOn: null });
    });
    const reader = new BoxReader(tables, desk.today);
    return ok({ boxes: tables.boxes.all().map((box) => reader.line(box)), notices: [] });
  });
}
