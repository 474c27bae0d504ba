import { expect, test } from 'vitest';
import { getHiveLookSheet } from '../../../../main/operations/hives/get-hive-look-sheet.ts';
import { recordHiveLook } from '../../../../main/operations/hives/record-hive-look.ts';
import { saveHive } from '../../../../main/operations/hives/save-hive.ts';
import { saveYard } from '../../../../main/operations/hives/save-yard.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, onDay } from '../../../builders/running-batch.ts';
import { aYard } from '../../../builders/yard.ts';

const look = { colonyId: 'h2', strength: 4, food: 2, note: 'swarm cells' };

function aDeskOfHives() {
  const desk = aDesk();
  mustOk(saveYard(desk, aYard()));
  for (const [id, code, yardId, endedOn] of [
    ['h10', 'H10', 'yard-1', null],
    ['h2', 'H2', 'yard-1', null],
    ['h1', 'H1', null, null],
    ['old', 'H3', 'yard-1', '2025-10-01'],
  ] as const)
    mustOk(saveHive(desk, aColony({ id, code, yardId, endedOn })));
  return desk;
}
const codesOf = (sheet: ReturnType<typeof getHiveLookSheet>) => sheet.rows.map((row) => row.code);

test('the living hives stand yard by yard, by code as people count', () => {
  const desk = aDeskOfHives();
  expect(codesOf(getHiveLookSheet(desk, { yardId: null, sheetDay: '2026-05-14' }))).toEqual(['H1', 'H2', 'H10']);
  expect(codesOf(getHiveLookSheet(desk, { yardId: 'yard-1', sheetDay: '2026-05-14' }))).toEqual(['H2', 'H10']);
});

test('a row knows the look typed for the sheet day, and the one before it', () => {
  const desk = aDeskOfHives();
  mustOk(recordHiveLook(desk, { ...look, id: 'new', lookedOn: '2026-05-14' }));
  mustOk(recordHiveLook(desk, { ...look, id: 'older', lookedOn: '2026-05-02', note: 'calm' }));
  mustOk(recordHiveLook(desk, { ...look, id: 'oldest', lookedOn: '2026-04-02', note: 'first' }));
  const row = (sheetDay: string) =>
    getHiveLookSheet(desk, { yardId: null, sheetDay }).rows.find((one) => one.id === 'h2');
  expect(row('2026-05-14')).toMatchObject({ typed: { id: 'new' }, last: { note: 'calm' } });
  expect(row('2026-05-15')).toMatchObject({ typed: null, last: { id: 'new' } });
  expect(row('2026-04-01')).toMatchObject({ typed: null, last: null });
});

test('a hive that must be left alone says so', () => {
  // Prepupae and young pupae, days 5.5 to 8.5 after larvae: no shaking, no turning [Wang et al. 2016].
  const { rows } = getHiveLookSheet(onDay(aDeskWithBatch(), '2026-05-11'), { yardId: null, sheetDay: '2026-05-11' });
  expect(rows.map(({ code, handsOff }) => [code, handsOff?.until ?? null])).toEqual([
    ['H03', null],
    ['H12', '2026-05-12'],
  ]);
});
