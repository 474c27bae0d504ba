import type { z } from 'zod';
import type { HiveId } from '../../../shared/contract/hives.ts';
import type { HiveRecords, TraitFigure } from '../../../shared/contract/stock.ts';
import { isoOfDay } from '../../../shared/kernel/day.ts';
import { STOCK_TRAITS, type StockTrait } from '../../../shared/model/stock.ts';
import { scoreSummary } from '../../engine/stock/score-summary.ts';
import { isStrictlyHygienic, testFigure } from '../../engine/stock/test-figures.ts';
import type { Tables } from '../../workbook/workbook.ts';
import type { Desk } from '../operation.ts';
import { staysOf } from '../queen-pedigree.ts';

/** Everything written down about one hive as stock, each list newest first. */
export function getHiveRecords({ workbook: { tables } }: Desk, { colonyId }: z.infer<typeof HiveId>): HiveRecords {
  const scores = tables.stockScores.where({ colonyId }).toSorted((a, b) => (a.scoredOn < b.scoredOn ? 1 : -1));
  const tests = tables.stockTests.where({ colonyId }).toSorted((a, b) => (a.testedOn < b.testedOn ? 1 : -1));
  const yard = (id: string | null) => (id === null ? null : (tables.yards.get(id)?.name ?? null));
  return {
    scores,
    summary: traitFigures((trait) => scores.filter((one) => one.trait === trait).map((one) => one.score)),
    tests: tests.map((test) => ({ ...test, figure: testFigure(test) })),
    strictlyHygienic: isStrictlyHygienic(tests.toReversed()),
    treatments: tables.treatments.where({ colonyId }).toSorted((a, b) => (a.fromOn < b.fromOn ? 1 : -1)),
    moves: tables.colonyMoves
      .where({ colonyId })
      .toSorted((a, b) => (a.movedOn < b.movedOn ? 1 : -1))
      .map((move) => ({ ...move, from: yard(move.fromYardId), to: yard(move.toYardId) })),
    queens: queensOf(tables, colonyId),
  };
}

export const traitFigures = (scoresOf: (trait: StockTrait) => readonly number[]): Record<StockTrait, TraitFigure> =>
  Object.fromEntries(STOCK_TRAITS.map((trait) => [trait, scoreSummary(trait, scoresOf(trait))])) as Record<
    StockTrait,
    TraitFigure
  >;

function queensOf(tables: Tables, colonyId: string): HiveRecords['queens'] {
  return staysOf(tables)
    .filter((stay) => stay.colonyId === colonyId)
    .toReversed()
    .flatMap(({ queenId, from, until }) => {
      const queen = tables.queens.get(queenId);
      return queen
        ? [{ id: queen.id, number: queen.number, from: isoOfDay(from), until: until === null ? null : isoOfDay(until) }]
        : [];
    });
}
