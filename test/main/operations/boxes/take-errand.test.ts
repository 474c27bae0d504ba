import { expect, test } from 'vitest';
import { previewErrand } from '../../../../main/operations/boxes/preview-errand.ts';
import { takeErrand } from '../../../../main/operations/boxes/take-errand.ts';
import { countTally } from '../../../../main/operations/tally-keeping.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aTypedLook, errandTypedInto, look } from '../../../builders/errand.ts';
import { aDeskWithBoxes, onDay, refusalOf } from '../../../builders/running-batch.ts';

const home = () => onDay(aDeskWithBoxes(), '2026-06-06');
const results = ({ workbook: { tables } }: ReturnType<typeof home>) =>
  tables.boxLooks.all().map(({ boxId, result }) => [boxId, result]);

test('takes new looks in once, with the queens numbered there, and keeps the sums', () => {
  const desk = home();
  const file = errandTypedInto(desk, 'K01-K03', (there) => {
    look(there, aTypedLook(1, 'laying', { queen: { id: 'q1', number: '26-501' }, strength: 4 }));
    look(there, aTypedLook(2, 'none'));
  });
  expect(mustOk(takeErrand(desk, { file, choices: {} }))).toEqual({ added: 2, changed: 0, kept: 0 });
  expect(results(desk)).toEqual([
    ['box-1', 'laying'],
    ['box-2', 'none'],
  ]);
  const { tables } = desk.workbook;
  expect(tables.queens.all()).toMatchObject([
    { number: '26-501', boxId: 'box-1', batchId: 'batch-1', place: 'in-box' },
  ]);
  expect(tables.tallies.get('batch-1')).toEqual(countTally(tables, 'batch-1'));
  expect(tables.tallies.get('batch-1')).toMatchObject({ laying: 1, emergenceKnown: 2 });
  // The same file again, and the same errand after more was typed: nothing twice.
  expect(mustOk(previewErrand(desk, { file }))).toMatchObject({ looks: [], same: 2 });
  expect(mustOk(takeErrand(desk, { file, choices: {} }))).toEqual({ added: 0, changed: 0, kept: 2 });
  expect(tables.boxLooks.all()).toHaveLength(2);
});

test('asks where both sides saw something different, writes nothing before, and then what was chosen', () => {
  const desk = home();
  const file = errandTypedInto(desk, 'K01-K02', (there) => {
    look(there, aTypedLook(1, 'none'));
    look(there, aTypedLook(2, 'none'));
  });
  look(desk, aTypedLook(1, 'laying', { id: 'a' }));
  look(desk, aTypedLook(2, 'laying', { id: 'b' }));
  expect(refusalOf(takeErrand(desk, { file, choices: { 'look-1-none': 'theirs' } }))).toEqual({
    kind: 'errand-not-decided',
    field: 'choices',
    box: 'K02',
    on: '2026-06-06',
  });
  expect(results(desk)).toEqual([
    ['box-1', 'laying'],
    ['box-2', 'laying'],
  ]);
  const choices = { 'look-1-none': 'theirs', 'look-2-none': 'mine' } as const;
  expect(mustOk(takeErrand(desk, { file, choices }))).toEqual({ added: 0, changed: 1, kept: 1 });
  expect(results(desk)).toEqual([
    ['box-1', 'none'],
    ['box-2', 'laying'],
  ]);
});

test('is one step that can be taken back', () => {
  const desk = home();
  const file = errandTypedInto(desk, 'K01-K02', (there) => {
    look(there, aTypedLook(1, 'laying'));
    look(there, aTypedLook(2, 'laying'));
  });
  mustOk(takeErrand(desk, { file, choices: {} }));
  expect(mustOk(desk.workbook.undo()).words).toMatchObject({ did: 'take-errand', looks: 2 });
  expect(results(desk)).toEqual([]);
});

test('leaves out a queen number that another queen has here', () => {
  const desk = home();
  look(desk, aTypedLook(3, 'laying', { queen: { id: 'mine', number: '26-501' } }));
  const file = errandTypedInto(desk, 'K01', (there) =>
    look(there, aTypedLook(1, 'laying', { queen: { id: 'theirs', number: '26-501' } })),
  );
  expect(mustOk(previewErrand(desk, { file })).looks).toMatchObject([{ standing: 'number-taken' }]);
  expect(mustOk(takeErrand(desk, { file, choices: {} }))).toMatchObject({ added: 0 });
});
