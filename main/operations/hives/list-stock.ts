import type { z } from 'zod';
import { STOCK_TEST_ROWS } from '../../../shared/biology/stock-traits.ts';
import type { ListStock, StockLine, TraitFigure } from '../../../shared/contract/stock.ts';
import { compareCodes } from '../../../shared/kernel/box-codes.ts';
import { type Day, yearOfDay } from '../../../shared/kernel/day.ts';
import type { Colony } from '../../../shared/model/colony.ts';
import type { StockTest, StockTestKind } from '../../../shared/model/stock.ts';
import { type KinHive, kinshipOf } from '../../engine/pedigree/kinship.ts';
import { honeyStanding, isStrictlyHygienic, testFigure } from '../../engine/stock/test-figures.ts';
import type { Tables } from '../../workbook/workbook.ts';
import type { Desk } from '../operation.ts';
import { type Pedigree, readPedigree } from '../queen-pedigree.ts';
import { traitFigures } from './get-hive-records.ts';
import { asKin } from './hive-kin.ts';

/** Every living hive with its scores and tests of the last seasons, by code; the table from which a breeder is chosen. */
export function listStock(
  { workbook: { tables }, today }: Desk,
  { seasons }: z.infer<typeof ListStock>,
): readonly StockLine[] {
  const since = `${yearOfDay(today) - seasons + 1}-01-01`;
  const pedigree = readPedigree(tables);
  const drones = droneHives(tables, pedigree, today);
  return tables.colonies
    .where({ endedOn: null })
    .toSorted((a, b) => compareCodes(a.code, b.code))
    .map((colony) => stockLine(tables, colony, { pedigree, drones, since, today }));
}

interface StockSetting {
  readonly pedigree: Pedigree;
  readonly drones: readonly DroneHive[];
  readonly since: string;
  readonly today: Day;
}

function stockLine(tables: Tables, colony: Colony, { pedigree, drones, since, today }: StockSetting): StockLine {
  const { id, code, name, motherLine } = colony;
  const scores = tables.stockScores.where({ colonyId: id }).filter((one) => one.scoredOn >= since);
  const tests = tables.stockTests
    .where({ colonyId: id })
    .filter((one) => one.testedOn >= since)
    .toSorted((a, b) => (a.testedOn < b.testedOn ? -1 : 1));
  const kinHive = asKin(colony, pedigree, today);
  const queen = kinHive.queenId === null ? null : tables.queens.get(kinHive.queenId);
  return {
    id,
    code,
    name,
    motherLine,
    yard: colony.yardId === null ? null : (tables.yards.get(colony.yardId)?.name ?? null),
    breeder: tables.colonyRoles.where({ colonyId: id, season: yearOfDay(today), role: 'breeder' }).length > 0,
    queen: queen && { id: queen.id, number: queen.number, bornIn: queen.bornIn },
    kin: drones.flatMap((drone) => {
      const how = kinshipOf(kinHive, drone.kin);
      return how === null ? [] : [{ code: drone.code, how }];
    }),
    traits: traitFigures((trait) => scores.filter((one) => one.trait === trait).map((one) => one.score)),
    pin: meanOf(tests, 'pin-test', STOCK_TEST_ROWS.pinTests.fewest),
    strictlyHygienic: isStrictlyHygienic(tests),
    mites: meanOf(tests, 'mite-wash', 1),
    honey: honeyOf(tables, colony, tests),
  };
}

interface DroneHive {
  readonly code: string;
  readonly kin: KinHive;
}

function droneHives(tables: Tables, pedigree: Pedigree, today: Day): readonly DroneHive[] {
  return tables.colonyRoles
    .where({ season: yearOfDay(today), role: 'drone-mother' })
    .flatMap(({ colonyId }) => tables.colonies.get(colonyId) ?? [])
    .filter((colony) => colony.endedOn === null)
    .map((colony) => ({ code: colony.code, kin: asKin(colony, pedigree, today) }));
}

function meanOf(tests: readonly StockTest[], kind: StockTestKind, fewest: number): TraitFigure {
  const figures = tests.filter((test) => test.kind === kind).flatMap((test) => testFigure(test) ?? []);
  if (figures.length === 0) return { n: 0, value: null, enough: false };
  const value = figures.reduce((sum, one) => sum + one, 0) / figures.length;
  return { n: figures.length, value, enough: figures.length >= fewest };
}

/**
 * The latest season in which this hive's honey was weighed, beside the other hives that stand in its yard. Where its
 * yard is not known there is nothing to set it beside.
 */
function honeyOf(tables: Tables, colony: Colony, tests: readonly StockTest[]): StockLine['honey'] {
  const last = tests.findLast((test) => test.kind === 'honey');
  if (!last) return null;
  const year = last.testedOn.slice(0, 4);
  const kilogramsOf = (colonyId: string) =>
    tables.stockTests
      .where({ colonyId, kind: 'honey' })
      .filter((test) => test.testedOn.startsWith(year))
      .reduce<number | null>((sum, test) => (sum ?? 0) + test.counted, null);
  const inYard = colony.yardId === null ? [colony] : tables.colonies.where({ yardId: colony.yardId });
  const all = inYard.flatMap((one) => kilogramsOf(one.id) ?? []);
  return { season: Number(year), ...honeyStanding(kilogramsOf(colony.id) ?? 0, all) };
}
