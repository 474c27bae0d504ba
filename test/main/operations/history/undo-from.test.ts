import { expect, test } from 'vitest';
import { listSteps } from '../../../../main/operations/history/list-steps.ts';
import { redo } from '../../../../main/operations/history/redo.ts';
import { undo } from '../../../../main/operations/history/undo.ts';
import { undoFrom } from '../../../../main/operations/history/undo-from.ts';
import { saveYard } from '../../../../main/operations/hives/save-yard.ts';
import { refuse } from '../../../../shared/kernel/result.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aWatchedDesk, dataDigest } from '../../../builders/watched-workbook.ts';
import { aYard } from '../../../builders/yard.ts';

function aDeskWithYards(count: number) {
  const watched = aWatchedDesk();
  const digests = [dataDigest(watched.db)];
  for (let n = 1; n <= count; n += 1) {
    mustOk(saveYard(watched.desk, aYard({ id: `y${n}`, name: `Yard ${n}` })));
    digests.push(dataDigest(watched.db));
  }
  return { ...watched, digests };
}

const yardsOf = (steps: readonly { readonly words: object }[]) =>
  steps.map(({ words }) => ('yard' in words ? words.yard : '?'));

test('takes back a change and all later ones, each to be done again by itself', () => {
  const { desk, db, digests } = aDeskWithYards(5);
  expect(yardsOf(mustOk(undoFrom(desk, { step: 3 })))).toEqual(['Yard 5', 'Yard 4', 'Yard 3']);
  expect(dataDigest(db)).toBe(digests[2]);
  expect(mustOk(redo(desk)).words).toEqual({ did: 'save-yard', yard: 'Yard 3' });
  expect(dataDigest(db)).toBe(digests[3]);
  mustOk(redo(desk));
  mustOk(redo(desk));
  expect(dataDigest(db)).toBe(digests[5]);
  expect(redo(desk)).toEqual(refuse({ kind: 'nothing-to-redo' }));
});

test('leaves out what is taken back already, and every undo is a line of its own', () => {
  const { desk, db, digests } = aDeskWithYards(3);
  mustOk(undo(desk));
  expect(yardsOf(mustOk(undoFrom(desk, { step: 1 })))).toEqual(['Yard 2', 'Yard 1']);
  expect(dataDigest(db)).toBe(digests[0]);
  const { steps } = listSteps(desk, { before: null, limit: 10 });
  expect(steps.map(({ kind, ofStep }) => [kind, ofStep])).toEqual([
    ['undo', 1],
    ['undo', 2],
    ['undo', 3],
    ['change', null],
    ['change', null],
    ['change', null],
  ]);
  expect(undoFrom(desk, { step: 1 })).toEqual(refuse({ kind: 'nothing-to-undo' }));
});

test('all or none: one row that something else has changed stops them all', () => {
  const { desk, db } = aDeskWithYards(3);
  // Past the program, with a step of its own so that the file takes it.
  db.exec(`BEGIN; UPDATE yard SET note = 'by hand' WHERE id = 'y1';
    INSERT INTO journal_step (at, kind, words) VALUES ('2026-06-01T18:00:00.000Z', 'undo', '{"did":"other"}'); COMMIT`);
  const before = dataDigest(db);
  const lines = listSteps(desk, { before: null, limit: 10 }).steps.length;
  expect(undoFrom(desk, { step: 1 })).toEqual(
    refuse({ kind: 'changed-since', way: 'undo', words: { did: 'save-yard', yard: 'Yard 1' } }),
  );
  expect(dataDigest(db)).toBe(before);
  expect(listSteps(desk, { before: null, limit: 10 }).steps).toHaveLength(lines);
});
