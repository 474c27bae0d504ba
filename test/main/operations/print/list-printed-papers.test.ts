import { describe, expect, test } from 'vitest';
import type { Desk } from '../../../../main/operations/operation.ts';
import { listPrintedPapers } from '../../../../main/operations/print/list-printed-papers.ts';
import { notePaper } from '../../../../main/operations/print/note-paper.ts';
import { addDays } from '../../../../shared/kernel/day.ts';
import { aBar, aBatch, aCount } from '../../../builders/batch.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aQueen } from '../../../builders/queen.ts';
import { aTreatment } from '../../../builders/stock.ts';
import { aYard } from '../../../builders/yard.ts';

const CARD = { paper: 'queen-card', queenId: 'queen-1' } as const;
const HIVE = { paper: 'hive-page', colonyId: 'colony-1' } as const;
const YEAR = { paper: 'inspector-pages', yardId: null, year: 2026 } as const;
const REPORT = { paper: 'season-report', season: 2026 } as const;

/** The queen of the hive. */
const HEAD = { id: 'head', number: '26-002', place: 'in-hive', colonyId: 'colony-1' } as const;

/** A hive, a queen and a batch of one bar; every paper of them printed on 20 June. */
function aDeskWithPapers(): Desk {
  const desk = aDesk({ today: '2026-06-20' });
  fill(desk, ({ yards, colonies, queens, batches, bars, counts }) => {
    yards.insert(aYard());
    colonies.insert(aColony({ yardId: 'yard-1' }));
    queens.insert(aQueen());
    queens.insert(aQueen(HEAD));
    batches.insert(aBatch());
    batches.insert(aBatch({ id: 'other', code: '26-09' }));
    bars.insert(aBar());
    counts.insert(aCount({ cells: 12 }));
  });
  for (const of of [CARD, HIVE, YEAR, REPORT]) mustOk(notePaper(desk, of));
  return desk;
}

const changed = (desk: Desk) =>
  listPrintedPapers(desk)
    .filter((one) => one.changed)
    .map(({ paper }) => paper)
    .toSorted();

describe('a printed paper', () => {
  test('still holds while nothing it says has changed, whatever else is typed', () => {
    const desk = aDeskWithPapers();
    expect(listPrintedPapers(desk)).toMatchObject([
      { paper: 'season-report', name: null, year: 2026, printedOn: '2026-06-20', changed: false },
      { paper: 'inspector-pages', name: null, year: 2026, changed: false },
      { paper: 'hive-page', name: 'H01', year: null, changed: false },
      { paper: 'queen-card', name: aQueen().number, year: null, changed: false },
    ]);
    fill(desk, ({ yards, colonies, batches }) => {
      yards.insert(aYard({ id: 'other', name: 'Heath' }));
      batches.insert(aBatch({ id: 'last-year', code: '25-01', season: 2025 }));
      colonies.insert(aColony({ id: 'second', code: 'H02', yardId: 'other' }));
    });
    // A hive more belongs to a year's pages of all yards.
    expect(changed(desk)).toEqual(['inspector-pages']);
  });

  test.each([
    ['a corrected count', ({ counts }) => counts.update(aCount({ cells: 11 })), ['season-report']],
    ['a count taken out', ({ counts }) => counts.remove('count-1'), ['season-report']],
    ['a batch more', ({ batches }) => batches.insert(aBatch({ id: 'more', code: '26-02' })), ['season-report']],
    [
      'a batch taken out',
      ({ bars, batches, counts }) => {
        counts.remove('count-1');
        bars.remove('bar-1');
        batches.remove('batch-1');
      },
      ['season-report'],
    ],
    [
      'what somebody told of her, which her card does not say',
      ({ queenFeedback }) =>
        queenFeedback.insert({
          ...{ id: 'told', queenId: 'queen-1', toldOn: '2026-06-19', toldBy: null, outcome: 'lays-well', note: null },
        }),
      [],
    ],
    [
      'the queen of the hive sold',
      ({ queens, queenMoves }) => {
        const sold = { place: 'sold', colonyId: null, goneTo: 'A neighbour' } as const;
        queens.update(aQueen({ ...HEAD, ...sold }));
        queenMoves.insert({
          ...{ id: 'm', queenId: 'head', movedOn: '2026-06-20', way: null, price: null, note: null },
          ...sold,
        });
      },
      ['hive-page', 'inspector-pages'],
    ],
    [
      'a look at the hive',
      ({ hiveLooks }) =>
        hiveLooks.insert({
          ...{ id: 'look', colonyId: 'colony-1', lookedOn: '2026-06-20', strength: 5, food: null, note: '' },
        }),
      ['hive-page', 'inspector-pages'],
    ],
    ['her mark', ({ queens }) => queens.update(aQueen({ markedOn: '2026-06-19' })), ['queen-card']],
    ['a treatment of that year', ({ treatments }) => treatments.insert(aTreatment()), ['hive-page', 'inspector-pages']],
    [
      'a treatment of another year',
      ({ treatments }) => treatments.insert(aTreatment({ fromOn: '2027-08-01' })),
      ['hive-page'],
    ],
  ] satisfies [string, Parameters<typeof fill>[1], string[]][])(
    '%s makes its papers out of date, until it is taken back',
    (_what, write, papers) => {
      const desk = aDeskWithPapers();
      fill(desk, write);
      expect(changed(desk)).toEqual(papers);
      mustOk(desk.workbook.undo());
      expect(changed(desk)).toEqual([]);
      mustOk(desk.workbook.redo());
      expect(changed(desk)).toEqual(papers);
    },
  );

  test('holds again once it is printed again, and is one paper', () => {
    const desk = aDeskWithPapers();
    fill(desk, ({ counts }) => counts.update(aCount({ cells: 11 })));
    mustOk(notePaper({ ...desk, today: addDays(desk.today, 1) }, REPORT));
    expect(changed(desk)).toEqual([]);
    expect(listPrintedPapers(desk).map(({ printedOn }) => printedOn)).toEqual([
      '2026-06-21',
      ...['2026-06-20', '2026-06-20', '2026-06-20'],
    ]);
  });

  test('of what is gone is not spoken of', () => {
    const desk = aDeskWithPapers();
    fill(desk, ({ queens }) => queens.remove('queen-1'));
    expect(listPrintedPapers(desk).map(({ paper }) => paper)).not.toContain('queen-card');
  });
});
