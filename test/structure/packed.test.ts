// What is burnt into the packed program is read back from it, by the packer's own library; and the Electron it is packed
// with is of a line its makers still mend.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { SENTINEL } from '@electron/fuses/dist/constants.js';
import { expect, onTestFinished, test } from 'vitest';
import packageFile from '../../package.json' with { type: 'json' };

/** A file that holds what the library looks for in a program: the mark, version 1, eight fuses, their states. */
function aProgram(states: string): string {
  const folder = mkdtempSync(join(tmpdir(), 'ripecell-packed-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const file = join(folder, 'ripecell');
  const wire = Buffer.concat([Buffer.from(SENTINEL), Buffer.from([1, states.length]), Buffer.from(states)]);
  writeFileSync(file, Buffer.concat([Buffer.alloc(1000, 7), wire, Buffer.alloc(1000, 7)]));
  return file;
}

const check = (...args: readonly string[]) =>
  spawnSync(process.execPath, [join(import.meta.dirname, 'packaging.mjs'), ...args], { encoding: 'utf8' });

test('a program with the fuses we promise passes', () => {
  const { status, stdout } = check('--program', aProgram('01001100'));
  expect([status, stdout]).toEqual([0, expect.stringContaining('1 packed programs read')]);
});

test.each([
  ['runAsNode', '11001100'],
  ['onlyLoadAppFromAsar', '01001000'],
  ['grantFileProtocolExtraPrivileges', '01001101'],
])('a program with the fuse %s as it must not be is named', (fuse, states) => {
  const { status, stderr } = check('--program', aProgram(states));
  expect([status, stderr]).toEqual([1, expect.stringContaining(`the fuse ${fuse} is not burnt in`)]);
});

/** First releases of Electron's lines: npm registry, package electron, field `time`, read 2026-11-30. */
const LINES = [
  { line: 42, since: '2026-05-06' },
  { line: 43, since: '2026-07-01' },
  { line: 44, since: '2026-08-25' },
  { line: 45, since: '2026-10-21' },
] as const;

test('the Electron it is packed with is of one of the three newest lines, which get security mends', () => {
  // Three lines: Electron's page "Electron Releases", support policy (electronjs.org/docs/latest/tutorial/electron-timelines), from memory.
  const mended = LINES.toSorted((a, b) => b.since.localeCompare(a.since)).slice(0, 3);
  const [line] = packageFile.devDependencies.electron.split('.').map(Number);
  expect(mended.map((one) => one.line)).toContain(line);
});
