import type { QueenPlace } from '../../../shared/model/queen.ts';
import { checkFree, type Draft, type DraftSetting, SIGNS } from './draft.ts';
import type { RowReader } from './row-reader.ts';

export function draftQueen(row: RowReader, setting: DraftSetting): Draft | null {
  const number = row.needed('number', SIGNS.code);
  const bornIn = row.raw('bornIn') === '' ? row.note('bornIn', 'empty') : row.wholeNumber('bornIn', 1950, 2200);
  const days = { markedOn: row.day('markedOn'), firstEggsOn: row.day('firstEggsOn'), provedOn: row.day('provedOn') };
  if (days.firstEggsOn !== null && days.provedOn !== null && days.provedOn < days.firstEggsOn)
    row.note('provedOn', 'out-of-order');
  const boxId = boxOf(row, setting);
  const colonyId = hiveOf(row, 'hive', setting);
  const rest = {
    motherId: null,
    breederId: hiveOf(row, 'breeder', setting),
    motherLine: row.text('motherLine', SIGNS.name),
    place: placeOf(row, boxId, colonyId, setting.choice.queenPlace),
    goneTo: row.text('goneTo', SIGNS.name),
    note: row.text('note', SIGNS.note),
  };
  if (number === null || bornIn === null) return null;
  checkFree(row, 'number', number, setting, setting.tables.queens.where({ number }).length > 0);
  const id = setting.ids.next();
  return {
    yard: null,
    write: ({ queens }) =>
      queens.insert({ id, number, bornIn, ...days, ...rest, boxId, colonyId, placementId: null, batchId: null }),
  };
}

/** Where she is: as the row says, else as her hive or box or buyer says, else as was said for all. */
function placeOf(row: RowReader, boxId: string | null, colonyId: string | null, forAll: QueenPlace): QueenPlace {
  const said = row.choice('place', ({ queens }) => queens.places);
  if (said !== null) return said;
  if (colonyId !== null) return 'in-hive';
  if (boxId !== null) return 'in-box';
  return row.raw('goneTo') === '' ? forAll : 'given';
}

export function hiveOf(row: RowReader, field: 'hive' | 'breeder' | 'builder', { tables }: DraftSetting): string | null {
  const code = row.raw(field);
  if (code === '') return null;
  return tables.colonies.where({ code })[0]?.id ?? row.note(field, 'no-such-hive');
}

function boxOf(row: RowReader, { tables }: DraftSetting): string | null {
  const code = row.raw('box');
  if (code === '') return null;
  return tables.boxes.where({ code: code.toUpperCase() })[0]?.id ?? row.note('box', 'no-such-box');
}
