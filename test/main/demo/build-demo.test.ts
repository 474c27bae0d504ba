import { expect, test } from 'vitest';
import { buildDemo, DEMO_DAY } from '../../../main/demo/build-demo.ts';
import { listBatches } from '../../../main/operations/batches/list-batches.ts';
import { listBoxes } from '../../../main/operations/boxes/list-boxes.ts';
import { offerLabels } from '../../../main/operations/print/offer-labels.ts';
import { getToday } from '../../../main/operations/today/get-today.ts';
import { isoOfDay } from '../../../shared/kernel/day.ts';
import { aDesk } from '../../builders/desk.ts';

function aDemo() {
  const desk = aDesk({ today: isoOfDay(DEMO_DAY) });
  buildDemo(desk);
  return desk;
}

test('the made-up yard has two full seasons, both methods, failures and a day full of jobs', () => {
  const desk = aDemo();
  const { tables } = desk.workbook;
  const batches = listBatches(desk);
  const closed = batches.filter((batch) => batch.state === 'closed');
  expect(closed.length).toBeGreaterThanOrEqual(12);
  expect(new Set(closed.map((batch) => batch.season))).toEqual(new Set([2024, 2025]));
  expect(new Set(batches.map((batch) => batch.method))).toEqual(new Set(['larva-grafting', 'cut-comb-edge']));
  expect(new Set(batches.map((batch) => batch.builder?.code)).size).toBe(4);
  expect(tables.boxes.all()).toHaveLength(24);
  expect(closed.some((batch) => batch.tally.taken === 0)).toBe(true);
  expect(new Set(tables.boxLooks.all().map((look) => look.result))).toEqual(
    new Set(['out', 'virgin', 'cell-failed', 'laying', 'queen', 'proved', 'none', 'drone-layer', 'gone']),
  );
  const today = getToday(desk);
  expect(today.due.map((job) => job.opens)).toEqual(expect.arrayContaining(['counts', 'place-cells', 'looks']));
  expect(today.late.length).toBeGreaterThan(0);
  expect(today.leaveAlone.length).toBeGreaterThan(1);
  expect(
    offerLabels(desk, { batchId: null, sheet: 'a4-3x7-63.5x38.1' }).batches.some((batch) => batch.unprinted > 0),
  ).toBe(true);
});

test('its boxes stand in every state and call for each kind of proposal', () => {
  const lines = listBoxes(aDemo());
  expect(new Set(lines.map((line) => line.state))).toEqual(new Set(['free', 'virgin', 'laying', 'proved', 'failed']));
  const proposed = lines.flatMap((line) => (line.proposal ? [`${line.code} ${line.proposal.kind}`] : []));
  expect(proposed).toEqual([
    'K14 give-cell',
    'M01 re-use',
    'M03 look-again',
    'M04 unite',
    'M05 shake-out',
    'M06 re-use',
    'M07 look-again',
    'M08 re-use',
  ]);
});

test('is the same every time', () => {
  const content = ({ workbook }: ReturnType<typeof aDemo>) =>
    JSON.stringify([
      workbook.tables.batches.all(),
      workbook.tables.tallies.all(),
      workbook.tables.boxLooks.all(),
      workbook.tables.queens.all(),
    ]);
  expect(content(aDemo())).toBe(content(aDemo()));
});
