import type { StockTrait } from '../../shared/model/stock.ts';
import { moveHive } from '../operations/hives/move-hive.ts';
import { recordScore } from '../operations/hives/record-score.ts';
import { recordTest } from '../operations/hives/record-test.ts';
import { recordTreatment } from '../operations/hives/record-treatment.ts';
import type { Desk } from '../operations/operation.ts';
import { YARDS } from './story.ts';
import { hiveId, need } from './story-needs.ts';

const SCORE_DAYS = ['2025-05-04', '2025-06-01', '2025-07-13', '2026-04-26'] as const;

/** Scores of one hive on those days; null where it was not scored. */
const SCORES: Readonly<Record<string, Readonly<Record<StockTrait, readonly (number | null)[]>>>> = {
  H03: { gentleness: [4, 3.5, 4, 4], calmness: [3.5, 3.5, 3, 4], swarming: [4, 4, 4, 4] },
  H07: { gentleness: [3, 3.5, 3, 3], calmness: [4, 3.5, 4, 4], swarming: [4, 3, 4, 4] },
  H15: { gentleness: [3, 2.5, 3, null], calmness: [3, 3, 2.5, null], swarming: [4, 2, 3, null] },
  H18: { gentleness: [null, null, 3, 3.5], calmness: [null, null, 3, 3], swarming: [null, null, 4, 4] },
  H12: { gentleness: [2, 1.5, 2, 2.5], calmness: [2, 2, 2.5, 2], swarming: [4, 4, 4, 4] },
};

const TESTS = [
  { hive: 'H03', kind: 'pin-test', on: '2025-06-10', counted: 42, outOf: 50, hours: 10 },
  { hive: 'H03', kind: 'pin-test', on: '2025-07-20', counted: 44, outOf: 50, hours: 10 },
  { hive: 'H07', kind: 'pin-test', on: '2025-06-10', counted: 29, outOf: 50, hours: 10 },
  { hive: 'H03', kind: 'mite-wash', on: '2026-04-26', counted: 2, outOf: 310, hours: null },
  { hive: 'H07', kind: 'mite-wash', on: '2026-04-26', counted: 5, outOf: 295, hours: null },
  { hive: 'H15', kind: 'mite-fall', on: '2026-05-03', counted: 6, outOf: 3, hours: null },
  { hive: 'H03', kind: 'honey', on: '2025-07-27', counted: 31.5, outOf: null, hours: null },
  { hive: 'H07', kind: 'honey', on: '2025-07-27', counted: 27, outOf: null, hours: null },
  { hive: 'H02', kind: 'honey', on: '2025-07-27', counted: 12.5, outOf: null, hours: null },
] as const;

const TREATED = {
  product: 'organic acid, as its label says',
  reason: 'mites',
  paper: null,
  note: 'No honey on the hives.',
};

/** Tells what was written down about the hives as stock. */
export function tellStock(desk: Desk): void {
  tellScores(desk);
  for (const { hive, on, ...test } of TESTS)
    need(recordTest(desk, { id: desk.ids.next(), colonyId: hiveId(hive), testedOn: on, note: null, ...test }));
  for (const hive of ['H03', 'H07', 'H15', 'H12']) {
    const days = { fromOn: '2025-08-03', toOn: '2025-08-10', amount: 'by the label' };
    need(recordTreatment(desk, { id: desk.ids.next(), colonyId: hiveId(hive), ...days, ...TREATED }));
  }
  const to = { toYardId: YARDS[1].id, place: 'hedge, place 4', paper: null, note: 'Before daybreak, door shut.' };
  need(moveHive(desk, { id: desk.ids.next(), colonyId: hiveId('H12'), movedOn: '2025-04-06', ...to }));
}

function tellScores(desk: Desk): void {
  for (const [hive, traits] of Object.entries(SCORES))
    for (const [trait, scores] of Object.entries(traits) as [StockTrait, readonly (number | null)[]][])
      SCORE_DAYS.forEach((scoredOn, index) => {
        const score = scores[index] ?? null;
        if (score === null) return;
        need(recordScore(desk, { id: desk.ids.next(), colonyId: hiveId(hive), trait, scoredOn, score, note: null }));
      });
}
