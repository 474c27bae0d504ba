import { expect, test } from 'vitest';
import { eveningChanges } from '../../../renderer/components/evening-changes.ts';
import type { Job, LeaveAlone, TodayView } from '../../../shared/contract/today.ts';

const aJob = (step: Job['step'], codes: readonly string[] = ['K01']): Job => ({
  batchId: 'batch-1',
  batch: '26-01',
  step,
  where: { kind: 'boxes', codes },
  yard: null,
  earliest: '2026-05-28',
  expected: '2026-05-28',
  latest: '2026-05-30',
  daysAfterLarvae: 24,
  timeOfDay: 'any',
  hardness: 'should',
  minutes: null,
  materials: [],
  canBeDropped: true,
  opens: 'looks',
  clash: null,
  ownTitle: null,
});
const shut = (what: string): LeaveAlone => ({
  what,
  hiveId: null,
  boxes: [],
  batchId: 'batch-1',
  yard: null,
  step: 'hands-off-mating',
  batch: '26-01',
  until: '2026-05-26',
  hours: null,
});
const view = (lists: Partial<TodayView>): TodayView => ({
  today: '2026-05-28',
  due: [],
  late: [],
  early: [],
  tomorrow: [],
  leaveAlone: [],
  quietHives: [],
  bring: [],
  minutesToday: 0,
  week: [],
  anyBatch: true,
  ...lists,
});

test('says what came, what went and what is left for fewer boxes', () => {
  const before = view({ due: [aJob('first-look', ['K01', 'K02', 'K03'])], late: [aJob('emergence-check')] });
  const after = view({ due: [aJob('first-look', ['K03'])], early: [aJob('sealed-brood-look')] });
  const { appeared, vanished, fewer } = eveningChanges(before, after);
  expect(appeared.map((job) => job.step)).toEqual(['sealed-brood-look']);
  expect(vanished.map((job) => job.step)).toEqual(['emergence-check']);
  expect(fewer.map((job) => job.where)).toEqual([{ kind: 'boxes', codes: ['K03'] }]);
});

test('a job that only moved from tomorrow to today is not new', () => {
  const moved = eveningChanges(view({ tomorrow: [aJob('first-look')] }), view({ due: [aJob('first-look')] }));
  expect([...moved.appeared, ...moved.vanished, ...moved.fewer]).toEqual([]);
});

test('hands-off times that begin and end are told apart', () => {
  const { shut: closed, freed } = eveningChanges(
    view({ leaveAlone: [shut('K01–K09')] }),
    view({ leaveAlone: [shut('H12')] }),
  );
  expect(closed.map((one) => one.what)).toEqual(['H12']);
  expect(freed.map((one) => one.what)).toEqual(['K01–K09']);
});
