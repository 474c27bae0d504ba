import { expect, test } from 'vitest';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { recordLook } from '../../../../main/operations/boxes/record-look.ts';
import { setRoles } from '../../../../main/operations/hives/set-roles.ts';
import { moveQueen } from '../../../../main/operations/queens/move-queen.ts';
import { getSeasonPlan } from '../../../../main/operations/season/get-season-plan.ts';
import { saveWish } from '../../../../main/operations/season/save-wish.ts';
import { saveSettings } from '../../../../main/operations/settings/save-settings.ts';
import { storedSettings } from '../../../../main/operations/stored-settings.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, aDeskWithBoxes, aStart, onDay } from '../../../builders/running-batch.ts';

const aWish = (changes: object = {}) => ({
  id: 'wish-1',
  forWhom: 'Club',
  queens: 5,
  wantedOn: '2026-06-20',
  settledOn: null,
  note: null,
  ...changes,
});

test('an empty workbook has no weeks; a wish alone makes weeks up to its day', () => {
  const desk = aDesk({ today: '2026-06-03' });
  expect(getSeasonPlan(desk)).toEqual({
    weeks: [],
    wishes: [],
    laying: 0,
    proved: 0,
    awayDays: [],
    dronesMatureFrom: null,
  });
  mustOk(saveWish(desk, aWish()));
  const { weeks } = getSeasonPlan(desk);
  expect(weeks.map(({ from, wanted }) => [from, wanted])).toEqual([
    ['2026-06-01', 0],
    ['2026-06-08', 0],
    ['2026-06-15', 5],
  ]);
});

test('builders and boxes by the calendars: twelve cells planned want twelve boxes from the day they are put in', () => {
  const desk = aDeskWithBatch('2026-05-04');
  mustOk(setRoles(desk, { colonyId: 'h12', season: 2026, roles: ['builder'], ids: ['role-1'] }));
  const weeks = new Map(getSeasonPlan(desk).weeks.map((week) => [week.from, week]));
  // Larvae on 4 May; cells leave the builder on 14 May; sealed brood is looked for on 6 June.
  expect(weeks.get('2026-05-04')).toMatchObject({ builders: { most: 1, of: 1 }, boxes: { most: 0, of: 0 } });
  expect(weeks.get('2026-05-11')).toMatchObject({ builders: { most: 1, of: 1 }, boxes: { most: 12, of: 0 } });
  expect(weeks.get('2026-05-18')).toMatchObject({ builders: { most: 0, of: 1 }, boxes: { most: 12, of: 0 } });
  expect(weeks.get('2026-06-01')).toMatchObject({ boxes: { most: 12 } });
});

test('a hive that a batch is in counts as a builder, also without the role, and no hive counts twice', () => {
  const desk = aDeskWithBatch('2026-05-04');
  const builders = () => getSeasonPlan(desk).weeks.map((week) => week.builders.of)[0];
  expect(builders()).toBe(1);
  mustOk(setRoles(desk, { colonyId: 'h12', season: 2026, roles: [], ids: [] }));
  expect(builders()).toBe(1);
  mustOk(setRoles(desk, { colonyId: 'h03', season: 2026, roles: ['builder'], ids: ['role-2'] }));
  expect(builders()).toBe(2);
});

test('cells that are in boxes are counted by their boxes, and two batches at once are added', () => {
  const desk = aDeskWithBoxes('2026-05-15');
  const next = { id: 'batch-2', newBreeder: null, newBuilder: null, breederId: 'h03', builderId: 'h12' };
  mustOk(startBatch(desk, aStart({ ...next, anchorOn: '2026-05-18', cellsPlanned: 5 })));
  const weeks = new Map(getSeasonPlan(desk).weeks.map((week) => [week.from, week.boxes]));
  expect(weeks.get('2026-05-11')).toEqual({ most: 6, of: 10 });
  // Six boxes of the first, and five cells of the second on 28 May: one more than the ten there are.
  expect(weeks.get('2026-05-25')).toEqual({ most: 11, of: 10 });
});

test('a queen given to the name of a wish is taken off what is still owed', () => {
  const desk = aDeskWithBoxes('2026-05-28');
  mustOk(saveWish(desk, aWish({ queens: 2 })));
  const look = { id: 'look-1', boxId: 'box-1', lookedOn: '2026-05-28', result: 'laying' } as const;
  const marked = { ...look, strength: null, food: null, note: null, queen: { id: 'queen-1', number: '26-001' } };
  mustOk(recordLook(desk, marked));
  expect(getSeasonPlan(desk)).toMatchObject({ laying: 1, proved: 0, wishes: [{ handedOver: 0, open: 2 }] });
  const move = { id: 'move-1', queenId: 'queen-1', movedOn: '2026-06-07', place: 'given', goneTo: 'club' } as const;
  mustOk(moveQueen(onDay(desk, '2026-06-07'), { ...move, colonyId: null, way: null, price: null, note: null }));
  expect(getSeasonPlan(onDay(desk, '2026-06-07'))).toMatchObject({ laying: 0, wishes: [{ handedOver: 1, open: 1 }] });
});

test('names the days away, and when the first drones are mature', () => {
  const desk = aDeskWithBatch();
  const settings = storedSettings(desk.workbook.tables.settings);
  mustOk(saveSettings(desk, { ...settings, awayDays: ['2026-05-30', '2026-05-23'], firstDroneEggsOn: '2026-04-01' }));
  // 40 days from egg to mature drone [Büchler et al. 2013, sec. 2.2.3].
  expect(getSeasonPlan(desk)).toMatchObject({
    awayDays: ['2026-05-23', '2026-05-30'],
    dronesMatureFrom: '2026-05-11',
  });
});
