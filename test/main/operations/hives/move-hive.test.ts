import { expect, test } from 'vitest';
import { moveHive } from '../../../../main/operations/hives/move-hive.ts';
import { fill, mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, refusalOf } from '../../../builders/running-batch.ts';
import { aYard } from '../../../builders/yard.ts';

/** H12 holds the cells of 26-01, larvae given on 4 May: hands off from 10 to 12 May 2026. */
function aDeskWithYards(today = '2026-06-01') {
  const desk = aDeskWithBatch(today);
  fill(desk, ({ yards }) => {
    yards.insert(aYard());
    yards.insert(aYard({ id: 'yard-2', name: 'Mill' }));
  });
  return desk;
}
const move = { colonyId: 'h12', place: 'hedge', paper: null, note: null };

test('keeps where it came from, and the hive stands where it was brought last', () => {
  const desk = aDeskWithYards();
  mustOk(moveHive(desk, { id: 'a', movedOn: '2026-05-20', toYardId: 'yard-1', ...move }));
  mustOk(moveHive(desk, { id: 'b', movedOn: '2026-05-25', toYardId: 'yard-2', ...move }));
  const { colonyMoves, colonies } = desk.workbook.tables;
  expect(colonyMoves.all().map(({ fromYardId, toYardId }) => [fromYardId, toYardId])).toEqual([
    [null, 'yard-1'],
    ['yard-1', 'yard-2'],
  ]);
  expect(colonies.get('h12')).toMatchObject({ yardId: 'yard-2', place: 'hedge' });
  mustOk(moveHive(desk, { id: 'c', movedOn: '2026-05-22', toYardId: 'yard-1', ...move }));
  expect(colonies.get('h12')?.yardId).toBe('yard-2');
  expect(colonyMoves.get('c')?.fromYardId).toBe('yard-1');
  mustOk(moveHive(desk, { id: 'd', movedOn: '2026-05-01', toYardId: 'yard-2', ...move }));
  expect(colonyMoves.get('d')?.fromYardId).toBeNull();
  mustOk(moveHive(desk, { id: 'b', movedOn: '2026-05-26', toYardId: 'yard-2', ...move, note: 'rain' }));
  expect(colonyMoves.get('b')).toMatchObject({ fromYardId: 'yard-1', note: 'rain' });
});

test('says that the hive was to be left alone, or that the day is to come, and keeps the move', () => {
  const desk = aDeskWithYards('2026-05-11');
  const moved = (id: string, movedOn: string) =>
    mustOk(moveHive(desk, { id, movedOn, toYardId: 'yard-1', ...move })).notices;
  expect(moved('a', '2026-05-11')).toEqual([{ kind: 'move-during-hands-off', hive: 'H12', until: '2026-05-12' }]);
  expect(moved('b', '2026-05-20')).toEqual([{ kind: 'day-in-future', field: 'movedOn', day: '2026-05-20' }]);
  expect(moved('c', '2026-05-09')).toEqual([]);
});

test('refuses a hive and a yard that are gone', () => {
  const desk = aDeskWithYards();
  const to = { id: 'a', movedOn: '2026-05-20', ...move };
  expect(refusalOf(moveHive(desk, { ...to, toYardId: 'gone' }))).toEqual({ kind: 'yard-not-found', field: 'yardId' });
  expect(refusalOf(moveHive(desk, { ...to, colonyId: 'gone', toYardId: null }))).toEqual({
    kind: 'hive-missing',
    field: 'colonyId',
  });
});
