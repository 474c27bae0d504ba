import type { LookRow } from '../../../shared/contract/boxes.ts';
import type { IsoDay } from '../../../shared/kernel/day.ts';
import type { MatingBox } from '../../../shared/model/mating-box.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { type BoxReader, daysSince } from '../box-lines.ts';

/** One row of an evening's typing: the box as it stands, and what was already typed for that day. */
export function lookRow(tables: Tables, reader: BoxReader, box: MatingBox, sheetDay: IsoDay): LookRow {
  const line = reader.line(box);
  const timetable = line.batchId === null ? null : reader.timetable(line.batchId);
  const look = tables.boxLooks.where({ boxId: box.id, lookedOn: sheetDay })[0];
  return {
    ...line,
    daysSinceEmergence: timetable ? daysSince(timetable, sheetDay) : null,
    typed: look
      ? { id: look.id, result: look.result, strength: look.strength, food: look.food, note: look.note }
      : null,
  };
}
