import { expect, test } from 'vitest';
import { listPrintedPapers } from '../../../../main/operations/print/list-printed-papers.ts';
import { notePaper } from '../../../../main/operations/print/note-paper.ts';
import { addDays } from '../../../../shared/kernel/day.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aQueen } from '../../../builders/queen.ts';

const CARD = { paper: 'queen-card', queenId: 'queen-1' } as const;

test('a paper is noted once, on the day it was printed last, as a named step that can be taken back', () => {
  const desk = aDesk({ today: '2026-06-20' });
  fill(desk, ({ queens }) => queens.insert(aQueen({ number: '26-041' })));
  mustOk(notePaper(desk, CARD));
  mustOk(notePaper({ ...desk, today: addDays(desk.today, 1) }, CARD));
  expect(listPrintedPapers(desk).map(({ printedOn }) => printedOn)).toEqual(['2026-06-21']);
  expect(mustOk(desk.workbook.undo()).words).toEqual({
    ...{ did: 'print-paper', paper: 'queen-card', name: '26-041', year: null },
  });
  expect(listPrintedPapers(desk).map(({ printedOn }) => printedOn)).toEqual(['2026-06-20']);
});

test('of what is gone nothing is noted', () => {
  const desk = aDesk();
  mustOk(notePaper(desk, CARD));
  expect(desk.workbook.journal.steps(null, 5)).toEqual([]);
});
