import { expect, test } from 'vitest';
import { previewPlan } from '../../../../main/operations/season/preview-plan.ts';
import type { PlanChoiceInput } from '../../../../shared/contract/forecast.ts';
import { aDeskWithCounted, through } from '../../../builders/counted-batches.ts';
import { aDesk } from '../../../builders/desk.ts';

const choice = (changes: Partial<PlanChoiceInput> = {}): PlanChoiceInput => ({
  wanted: 10,
  chance: 0.9,
  method: 'cut-comb-edge',
  batches: 1,
  cellsPerBuilder: null,
  boxes: null,
  larvaeEach: null,
  whatIf: { take: null, sealing: null, emergence: null, mating: null },
  leaveOutPractice: true,
  ...changes,
});
const seasons = () =>
  aDeskWithCounted([
    { tally: through(30, 22, 20, 18, 13) },
    { tally: through(30, 24, 22, 19, 15) },
    { tally: through(28, 20, 19, 16, 12) },
    { tally: through(32, 23, 22, 20, 14) },
  ]);

test('finds the fewest larvae and boxes that keep the promise, and what one fewer would do', async () => {
  const desk = seasons();
  const plan = await previewPlan(desk, choice());
  const larvae = plan.larvaeEach ?? 0;
  expect(plan.chance).toBeGreaterThanOrEqual(0.9);
  const fewer = await previewPlan(desk, choice({ larvaeEach: larvae - 1 }));
  expect(fewer.chance).toBeLessThan(0.9);
  const boxes = plan.boxes ?? 0;
  expect((await previewPlan(desk, choice({ larvaeEach: larvae, boxes }))).chance).toBeGreaterThanOrEqual(0.9);
  expect((await previewPlan(desk, choice({ larvaeEach: larvae, boxes: boxes - 1 }))).chance).toBeLessThan(0.9);
  expect(plan.stages.map(({ stage, batches }) => [stage, batches])).toEqual([
    ['take', 4],
    ['sealing', 4],
    ['emergence', 4],
    ['mating', 4],
  ]);
});

test('what is expected on the way is the product of the rates, and losses add up to what does not lay', async () => {
  const { onTheWay, stages, layingPer100 } = await previewPlan(seasons(), choice({ larvaeEach: 40, boxes: 40 }));
  let left = 40;
  stages.forEach(({ mean }, index) => {
    left *= mean;
    expect(onTheWay[index + 1]).toBeCloseTo(left, 1);
  });
  const lost = stages.reduce((sum, stage) => sum + stage.lost.mean, 0);
  expect(lost + layingPer100).toBeCloseTo(100, 6);
  expect(stages.reduce((sum, stage) => sum + stage.largest, 0)).toBeCloseTo(1, 9);
});

test('more queens need more larvae, several batches fewer, and a better mating fewer still', async () => {
  const desk = seasons();
  const larvae = async (changes: Partial<PlanChoiceInput>) =>
    (await previewPlan(desk, choice(changes))).larvaeEach ?? 0;
  const one = await larvae({});
  expect(await larvae({ wanted: 15 })).toBeGreaterThan(one);
  expect(3 * (await larvae({ batches: 3 }))).toBeLessThanOrEqual(one + 3);
  expect(await larvae({ whatIf: { take: null, sealing: null, emergence: null, mating: 0.95 } })).toBeLessThan(one);
});

test('says what holds it back when it cannot be reached', async () => {
  const held = await previewPlan(seasons(), choice({ wanted: 20, cellsPerBuilder: 15 }));
  expect(held).toMatchObject({ larvaeEach: null, heldBackBy: ['builder'], boxes: null });
  const short = await previewPlan(seasons(), choice({ boxes: 10 }));
  expect(short).toMatchObject({ larvaeEach: null, heldBackBy: ['boxes'] });
});

test('finds the fewest batches that do when none were settled on', async () => {
  const desk = seasons();
  const found = await previewPlan(desk, choice({ wanted: 14, cellsPerBuilder: 20, batches: null }));
  expect(found.batches).toBeGreaterThan(1);
  expect(found.larvaeEach).not.toBeNull();
  const one = await previewPlan(desk, choice({ wanted: 14, cellsPerBuilder: 20, batches: found.batches - 1 }));
  expect(one.larvaeEach).toBeNull();
});

test('a method never tried is planned with wide doubt, not refused', async () => {
  const untried = await previewPlan(aDesk(), choice({ wanted: 2, method: null, chance: 0.5 }));
  expect(untried.larvaeEach).toBeGreaterThan(4);
  expect(untried.stages.map(({ batches }) => batches)).toEqual([0, 0, 0, 0]);
  expect(untried.stagesGoTogether).toBe(false);
});

test('warns when good takes went with good matings', async () => {
  const swings = Array.from({ length: 12 }, (_, index) =>
    index % 2 === 0 ? { tally: through(30, 28, 27, 26, 25) } : { tally: through(30, 14, 10, 7, 3) },
  );
  expect((await previewPlan(aDeskWithCounted(swings), choice())).stagesGoTogether).toBe(true);
});
