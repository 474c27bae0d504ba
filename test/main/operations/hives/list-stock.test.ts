import { expect, test } from 'vitest';
import { listStock } from '../../../../main/operations/hives/list-stock.ts';
import type { Desk } from '../../../../main/operations/operation.ts';
import { moveQueen } from '../../../../main/operations/queens/move-queen.ts';
import { aColony, aColonyRole } from '../../../builders/colony.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aQueen } from '../../../builders/queen.ts';
import { aScore, aTest } from '../../../builders/stock.ts';
import { aYard } from '../../../builders/yard.ts';

function aDeskWithStock(): Desk {
  const desk = aDesk({ today: '2026-06-01' });
  fill(desk, ({ yards, colonies, colonyRoles, queens, stockScores, stockTests }) => {
    yards.insert(aYard());
    colonies.insert(aColony({ id: 'b', code: 'H10', yardId: 'yard-1' }));
    colonies.insert(aColony({ id: 'a', code: 'H02', yardId: 'yard-1' }));
    colonies.insert(aColony({ id: 'gone', code: 'H01', endedOn: '2025-11-01' }));
    colonyRoles.insert(aColonyRole({ colonyId: 'a', role: 'breeder' }));
    queens.insert(aQueen({ number: '25-001', bornIn: 2025 }));
    for (const [id, scoredOn, score] of [
      ['1', '2024-12-31', 1],
      ['2', '2025-01-01', 3],
      ['3', '2025-06-01', 4],
      ['4', '2026-05-01', 4],
      ['5', '2026-05-20', 3],
    ] as const)
      stockScores.insert(aScore({ id, colonyId: 'a', scoredOn, score }));
    stockTests.insert(aTest({ id: 'p1', colonyId: 'a', counted: 40 }));
    stockTests.insert(aTest({ id: 'p2', colonyId: 'a', counted: 50 }));
    stockTests.insert(aTest({ id: 'w', colonyId: 'a', kind: 'mite-wash', counted: 3, outOf: 300, hours: null }));
    const honey = { kind: 'honey', outOf: null, hours: null } as const;
    stockTests.insert(aTest({ id: 'h1', colonyId: 'a', testedOn: '2025-06-01', counted: 20, ...honey }));
    stockTests.insert(aTest({ id: 'h2', colonyId: 'a', testedOn: '2025-07-30', counted: 10, ...honey }));
    stockTests.insert(aTest({ id: 'h3', colonyId: 'b', testedOn: '2025-07-30', counted: 10, ...honey }));
    stockTests.insert(aTest({ id: 'h4', colonyId: 'b', testedOn: '2024-07-30', counted: 90, ...honey }));
  });
  const into = { place: 'in-hive', colonyId: 'a', way: null, goneTo: null, price: null, note: null } as const;
  mustOk(moveQueen(desk, { id: 'm', queenId: 'queen-1', movedOn: '2025-08-01', ...into }));
  return desk;
}

test('lists living hives by code, with scores of the asked seasons and what stands behind them', () => {
  const [first, second, ...more] = listStock(aDeskWithStock(), { seasons: 2 });
  expect(more).toEqual([]);
  expect(first).toMatchObject({
    code: 'H02',
    breeder: true,
    queen: { number: '25-001', bornIn: 2025 },
    traits: { gentleness: { n: 4, value: 3.5, enough: true }, swarming: { n: 0, value: null, enough: false } },
    pin: { n: 2, value: 0.9, enough: true },
    mites: { n: 1, value: 1, enough: true },
    strictlyHygienic: null,
    // Two harvests of one season are one sum; the mean is of the two hives of that yard in that season.
    honey: { season: 2025, kilograms: 30, mean: 20, colonies: 2, enough: false },
  });
  expect(second).toMatchObject({ code: 'H10', breeder: false, queen: null, pin: { n: 0, value: null, enough: false } });
});

test('honey of hives whose yard is not known is set beside no other', () => {
  const desk = aDeskWithStock();
  fill(desk, ({ colonies }) => {
    for (const colony of colonies.all()) colonies.update({ ...colony, yardId: null });
  });
  expect(listStock(desk, { seasons: 2 })[0]?.honey).toMatchObject({ kilograms: 30, mean: 30, colonies: 1 });
});

test('the present season alone leaves out what was scored before', () => {
  const [first] = listStock(aDeskWithStock(), { seasons: 1 });
  expect(first?.traits.gentleness).toEqual({ n: 2, value: 3.5, enough: false });
  expect(first?.honey).toBeNull();
});

test('names the drone mothers of this season that are her kin, and not those of last year', () => {
  const desk = aDeskWithStock();
  fill(desk, ({ colonies, colonyRoles }) => {
    for (const [id, code, season] of [
      ['d1', 'H20', 2026],
      ['d2', 'H21', 2025],
    ] as const) {
      colonies.insert(aColony({ id, code, motherLine: 'Anna' }));
      colonyRoles.insert(aColonyRole({ id: `role-${id}`, colonyId: id, role: 'drone-mother', season }));
    }
    colonies.update(aColony({ id: 'a', code: 'H02', yardId: 'yard-1', motherLine: 'Anna' }));
  });
  const kinOf = (code: string) => listStock(desk, { seasons: 2 }).find((line) => line.code === code)?.kin;
  expect(kinOf('H02')).toEqual([{ code: 'H20', how: 'same-line' }]);
  expect(kinOf('H20')).toEqual([{ code: 'H20', how: 'same-hive' }]);
  expect(kinOf('H10')).toEqual([]);
});
