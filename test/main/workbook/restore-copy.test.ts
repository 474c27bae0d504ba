import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { finishRestore, putInPlace } from '../../../main/workbook/restore-copy.ts';
import { aFolder } from '../../builders/workbook-file.ts';

const NOW = '2026-06-01T18:30:15.000Z';

/** Files stand in for workbooks: what is moved here is never opened. */
function aPlace() {
  const folder = aFolder();
  const file = join(folder, 'season.ripecell');
  const copy = join(aFolder(), 'copy.ripecell');
  writeFileSync(copy, 'the copy');
  return { folder, file, copy, programData: aFolder() };
}

test('the file in place is renamed, never written over, and a second time gets a second name', () => {
  const { folder, file, copy, programData } = aPlace();
  writeFileSync(file, 'first');
  expect(putInPlace(copy, file, programData, NOW)).toBe(join(folder, 'season until 2026-06-01T183015.ripecell'));
  writeFileSync(file, 'second');
  expect(putInPlace(copy, file, programData, NOW)).toBe(join(folder, 'season until 2026-06-01T183015 (2).ripecell'));
  expect(readdirSync(folder).map((name) => readFileSync(join(folder, name), 'utf8'))).toEqual([
    'second',
    'first',
    'the copy',
  ]);
  expect(readdirSync(programData)).toEqual([]);
});

/** Every state between two renames, as a power cut would leave it. */
test.each([
  { what: 'nothing renamed yet', there: { '': 'old', '-wal': 'log', '.new': 'the copy' } },
  { what: 'the file renamed, its log not', there: { ' until x': 'old', '-wal': 'log', '.new': 'the copy' } },
  { what: 'file and log renamed', there: { ' until x': 'old', ' until x-wal': 'log', '.new': 'the copy' } },
  { what: 'all done', there: { ' until x': 'old', ' until x-wal': 'log', '': 'the copy' } },
])('cut off with $what, it is carried to its end at the next start', ({ there }) => {
  const { file, programData } = aPlace();
  const kept = `${file} until x`;
  for (const [ending, text] of Object.entries(there)) writeFileSync(file + ending, text ?? '');
  writeFileSync(join(programData, 'restore-under-way.json'), JSON.stringify({ file, kept, fresh: `${file}.new` }));
  finishRestore(programData);
  expect(readFileSync(file, 'utf8')).toBe('the copy');
  expect(readFileSync(kept, 'utf8')).toBe('old');
  expect(readFileSync(`${kept}-wal`, 'utf8')).toBe('log');
  expect([existsSync(`${file}.new`), existsSync(`${file}-wal`), readdirSync(programData).length]).toEqual([
    false,
    false,
    0,
  ]);
});

test('cut off before it was written down, the workbook is as it was', () => {
  const { file, programData } = aPlace();
  writeFileSync(file, 'old');
  writeFileSync(`${file}.new`, 'half a co');
  finishRestore(programData);
  expect(readFileSync(file, 'utf8')).toBe('old');
});

test('a note that cannot be read moves nothing', () => {
  const { file, programData } = aPlace();
  writeFileSync(file, 'old');
  writeFileSync(join(programData, 'restore-under-way.json'), '{"file": ');
  finishRestore(programData);
  expect(readFileSync(file, 'utf8')).toBe('old');
  expect(readdirSync(programData)).toEqual([]);
});
