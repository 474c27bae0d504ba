import { readBoxCodes } from '../../../shared/kernel/box-codes.ts';
import { checkFree, type Draft, type DraftSetting, SIGNS } from './draft.ts';
import type { RowReader } from './row-reader.ts';

const LAST_WALK_ORDER = 100_000;

export function draftHive(row: RowReader, setting: DraftSetting): Draft | null {
  const code = row.needed('code', SIGNS.code);
  const rest = {
    name: row.text('name', SIGNS.name),
    place: row.text('place', SIGNS.name),
    motherLine: row.text('motherLine', SIGNS.name),
    note: row.text('note', SIGNS.note),
  };
  const yard = row.text('yard', SIGNS.name);
  if (code === null) return null;
  checkFree(row, 'code', code, setting, setting.tables.colonies.where({ code }).length > 0);
  const id = setting.ids.next();
  return {
    yard,
    write: ({ colonies }, yardId) => colonies.insert({ id, code, ...rest, yardId, endedOn: null }),
  };
}

export function draftBox(row: RowReader, setting: DraftSetting): Draft | null {
  const typed = row.needed('code', SIGNS.code);
  const codes = typed === null ? null : readBoxCodes(typed);
  const code = codes?.length === 1 ? (codes[0] ?? null) : null;
  if (typed !== null && code === null) row.note('code', 'not-a-code');
  const walkOrder = row.wholeNumber('walkOrder', 0, LAST_WALK_ORDER);
  const boxType = row.choice('boxType', ({ boxTypes }) => boxTypes) ?? setting.choice.boxType;
  const place = { row: row.text('row', SIGNS.row), note: row.text('note', SIGNS.note) };
  const yard = row.text('yard', SIGNS.name);
  if (code === null) return null;
  checkFree(row, 'code', code, setting, setting.tables.boxes.where({ code }).length > 0);
  const id = setting.ids.next();
  const order = walkOrder ?? Math.min(setting.lastWalkOrder + row.number, LAST_WALK_ORDER);
  return {
    yard,
    write: ({ boxes }, yardId) =>
      boxes.insert({ id, code, yardId, ...place, walkOrder: order, boxType, retiredOn: null }),
  };
}
