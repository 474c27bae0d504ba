import type { BoxLine } from '../../shared/contract/boxes.ts';
import { addDays, type Day, dayOfIso, laterOf } from '../../shared/kernel/day.ts';
import type { PlannedBox } from '../../shared/model/clash.ts';
import type { Tables } from '../workbook/workbook.ts';
import { BoxReader } from './box-lines.ts';
import { answersLook } from './look-answers.ts';

/** Boxes in use, and the first day on which each can take a cell. */
export function plannedBoxes(tables: Tables, today: Day): readonly PlannedBox[] {
  const reader = new BoxReader(tables, today);
  return tables.boxes
    .where({ retiredOn: null })
    .map((box) => ({ id: box.id, freeFrom: freeFrom(reader.line(box), today) }));
}

/**
 * A box is free now when it is empty, or when its last look settled it; else on the day after its queen is proved. In
 * one whose batch knows no such day there is no end in sight.
 */
function freeFrom(line: BoxLine, today: Day): Day | null {
  if (line.state === 'free' || answersLook('sealed-brood-look', line.lastResult)) return today;
  if (line.sealedBroodLookOn === null) return null;
  return laterOf(today, addDays(dayOfIso(line.sealedBroodLookOn), 1));
}
