import { expect, test } from 'vitest';
import { previewWorkbook } from '../../../../main/operations/files/preview-workbook.ts';
import { wholeWorkbook } from '../../../../main/operations/files/whole-workbook.ts';
import { english } from '../../../../shared/text/english/english.ts';
import { wholeProblemSentence } from '../../../../shared/text/sentences.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { handed } from '../../../builders/handed-table.ts';
import { aDeskWithBoxes, refusalOf } from '../../../builders/running-batch.ts';

const everything = () => structuredClone(wholeWorkbook(aDeskWithBoxes()));

test('says how many rows are new, changed and the same, and writes nothing', () => {
  const whole = everything();
  const rows = Object.entries(whole.tables).reduce(
    (sum, [key, table]) => sum + (key === 'tallies' ? 0 : table.length),
    0,
  );
  const empty = aDesk();
  const file = handed(JSON.stringify(whole));
  expect(mustOk(previewWorkbook(empty, { file }))).toEqual({
    name: 'Memory',
    exportedOn: '2026-05-14',
    added: rows,
    changed: 0,
    same: 0,
    problems: [],
  });
  expect(empty.workbook.savedAt).toBeNull();
  const [hive] = whole.tables.colonies;
  if (hive) hive.name = 'renamed';
  const again = previewWorkbook(aDeskWithBoxes(), { file: handed(JSON.stringify(whole)) });
  expect(mustOk(again)).toMatchObject({ added: 0, changed: 1, same: rows - 1 });
});

test('names table, row, field and remedy of what does not fit', () => {
  const whole = everything();
  const [, second] = whole.tables.boxes;
  const [first] = whole.tables.boxes;
  if (second && first) second.code = first.code;
  const seen = mustOk(previewWorkbook(aDesk(), { file: handed(JSON.stringify(whole)) }));
  expect(seen.problems).toEqual([{ table: 'boxes', row: 2, kind: 'twice', field: 'code', text: 'K01' }]);
  expect(seen.problems.map((problem) => wholeProblemSentence(english, problem))).toEqual([
    'boxes, row 2. code: “K01” stands twice in the file. Keep one of the two.',
  ]);
  const broken = {
    ...whole,
    tables: { ...whole.tables, batches: [{ ...whole.tables.batches[0], anchorOn: '2026-02-30' }] },
  };
  expect(mustOk(previewWorkbook(aDesk(), { file: handed(JSON.stringify(broken)) })).problems).toEqual([
    { table: 'batches', row: 1, kind: 'not-valid', field: 'anchorOn', text: '"2026-02-30"' },
  ]);
});

test('a file of another kind is declined', () => {
  expect(refusalOf(previewWorkbook(aDesk(), { file: handed('code\nH1') }))).toMatchObject({
    kind: 'file-unreadable',
    trouble: { reason: 'not-json' },
  });
});
