import { aColony } from './colony.ts';
import { aDesk, fill } from './desk.ts';
import { aFeeding } from './feeding.ts';
import { aQueen } from './queen.ts';

const BLANK = { amount: null, reason: null, paper: null, note: null };

/** Of H1: three scores of gentleness, one of swarming, none of calmness; two pin tests and two counts of mites. */
export function aDeskWithStock() {
  const desk = aDeskWithRecords();
  fill(desk, ({ stockScores, stockTests }) => {
    const score = (id: string, trait: 'gentleness' | 'swarming', scoredOn: string, value: number) =>
      stockScores.insert({ id, colonyId: 'h1', trait, scoredOn, score: value, note: null });
    score('s0', 'gentleness', '2025-06-01', 1);
    score('s1', 'gentleness', '2026-05-01', 3.5);
    score('s2', 'gentleness', '2026-06-01', 4);
    score('s3', 'swarming', '2026-06-01', 3);
    const test = { colonyId: 'h1', hours: null, note: null };
    stockTests.insert({
      ...test,
      id: 'p1',
      kind: 'pin-test',
      testedOn: '2026-05-02',
      counted: 40,
      outOf: 50,
      hours: 10,
    });
    stockTests.insert({
      ...test,
      id: 'p2',
      kind: 'pin-test',
      testedOn: '2026-06-02',
      counted: 44,
      outOf: 50,
      hours: 10,
    });
    stockTests.insert({ ...test, id: 'w1', kind: 'mite-wash', testedOn: '2026-04-20', counted: 2, outOf: 320 });
    stockTests.insert({ ...test, id: 'f1', kind: 'mite-fall', testedOn: '2025-07-20', counted: 9, outOf: 3 });
  });
  return desk;
}

/** Two hives in one yard and one in none; a full and a bare treatment, a full and a bare move, queens that came and went. */
export function aDeskWithRecords() {
  const desk = aDesk({ today: '2026-10-01' });
  fill(desk, (tables) => {
    tables.yards.insert({ id: 'mill', name: 'Mill', note: null });
    tables.yards.insert({ id: 'hill', name: 'Wzgórze', note: null });
    tables.colonies.insert(aColony({ id: 'h1', code: 'H1', yardId: 'mill', place: 'row 2' }));
    tables.colonies.insert(aColony({ id: 'h2', code: 'H2', yardId: 'mill' }));
    tables.colonies.insert(aColony({ id: 'h3', code: 'H3', yardId: null, endedOn: '2025-11-01' }));
    tables.hiveLooks.insert({
      id: 'l1',
      colonyId: 'h1',
      lookedOn: '2026-05-10',
      strength: 4,
      food: null,
      note: 'strong, rogue cell removed',
    });
    const full = { amount: '2 strips', reason: 'mites', paper: 'LOT 17', note: null };
    tables.treatments.insert({
      id: 't1',
      colonyId: 'h1',
      fromOn: '2026-08-01',
      toOn: '2026-09-12',
      product: 'acid A',
      ...full,
    });
    tables.feedings.insert(aFeeding({ colonyId: 'h1', litres: 1.5 }));
    tables.treatments.insert({
      id: 't2',
      colonyId: 'h2',
      fromOn: '2026-08-02',
      toOn: null,
      product: 'acid B',
      ...BLANK,
    });
    tables.treatments.insert({
      id: 't0',
      colonyId: 'h1',
      fromOn: '2024-08-01',
      toOn: '2024-09-01',
      product: 'long ago',
      ...BLANK,
    });
    const move = { place: null, note: null };
    tables.colonyMoves.insert({
      id: 'm1',
      colonyId: 'h1',
      movedOn: '2026-06-01',
      fromYardId: 'hill',
      toYardId: 'mill',
      paper: 'permit 4',
      ...move,
    });
    tables.colonyMoves.insert({
      id: 'm2',
      colonyId: 'h2',
      movedOn: '2026-07-01',
      fromYardId: null,
      toYardId: 'mill',
      paper: null,
      ...move,
    });
    tables.queens.insert(aQueen({ id: 'q1', number: '26-001' }));
    const gone = { queenId: 'q1', way: null, price: null, note: null, colonyId: null };
    tables.queenMoves.insert({
      id: 'w1',
      movedOn: '2026-07-20',
      place: 'in-hive',
      goneTo: null,
      ...gone,
      colonyId: 'h1',
    });
    tables.queenMoves.insert({ id: 'w2', movedOn: '2026-09-20', place: 'sold', goneTo: null, ...gone });
  });
  return desk;
}
