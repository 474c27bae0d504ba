import { spawn } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import { createWorkbookFile } from '../../main/workbook/create-workbook.ts';
import { lookAtWorkbookFile } from '../../main/workbook/open-workbook.ts';
import type { Workbook } from '../../main/workbook/workbook.ts';
import type { FaultReport } from './fault-report.ts';
import { MIGRATIONS, settingIn } from './sample-workbook.ts';

const WRITER = fileURLToPath(new URL('./kill-child.ts', import.meta.url));
/** Milliseconds between two saves of the writer: quicker than anyone types. */
const PAUSE = 50;

/**
 * One program saves without rest, another looks at the same workbook again and again. What was acknowledged before a
 * look must be seen by it, whole; and the writer must go on as if it were alone.
 */
export async function faults({ short }: { readonly short: boolean }): Promise<readonly FaultReport[]> {
  const looks = short ? 10 : 50;
  const folder = mkdtempSync(join(tmpdir(), 'ripecell-looking-'));
  const setting = settingIn(folder);
  const file = join(folder, 'written.ripecell');
  const created = createWorkbookFile({ file, name: 'Written', kind: 'real' }, setting);
  if (!created.ok) throw new Error(created.refusal.kind);
  created.value.close();
  mkdirSync(join(folder, 'writer'));
  const writer = spawn(process.execPath, [WRITER, file, MIGRATIONS, join(folder, 'writer'), 'honest', `${PAUSE}`]);
  let acknowledged = 0;
  let said = '';
  writer.stdout.on('data', (bytes) => {
    said += bytes;
    const lines = said.split('\n');
    said = lines.pop() ?? '';
    for (const line of lines) if (line.startsWith('A ')) acknowledged = Number(line.slice(2));
  });
  try {
    while (acknowledged < 3) await wait(20);
    const found = { seen: 0, missing: 0, torn: 0, refused: 0, missedByTheFileAlone: 0 };
    for (let look = 0; look < looks; look += 1) {
      const before = acknowledged;
      const opened = lookAtWorkbookFile(file, setting);
      if (!opened.ok) found.refused += 1;
      else {
        if (opened.value.tables.batches.all().length < before) found.missing += 1;
        else if (isWhole(opened.value)) found.seen += 1;
        else found.torn += 1;
        opened.value.close();
      }
      if (seenInTheFileAlone(file, folder) < before) found.missedByTheFileAlone += 1;
      await wait(PAUSE);
    }
    const wrote = acknowledged;
    await wait(10 * PAUSE);
    const goesOn = writer.exitCode === null && acknowledged > wrote;
    return [
      {
        harness: 'looking at a workbook another program writes in',
        outcome: found.seen === looks && goesOn ? 'passed' : 'failed',
        figures: [
          `looking looks ${looks}`,
          `looking whole and up to date ${found.seen}`,
          `looking missing what was acknowledged ${found.missing}`,
          `looking torn ${found.torn}`,
          `looking refused ${found.refused}`,
          `looking saves of the writer meanwhile ${wrote}, ${goesOn ? 'and going on' : 'then stopped'}`,
        ],
      },
      {
        harness: 'looking control: a copy of the file without its log must miss entries',
        outcome: found.missedByTheFileAlone > 0 ? 'passed' : 'failed',
        figures: [`looking control copies that missed entries ${found.missedByTheFileAlone} of ${looks}`],
      },
    ];
  } finally {
    writer.kill('SIGKILL');
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Every change of the writer says how many bars belong to it, and keeps their sum. */
function isWhole({ tables }: Workbook): boolean {
  const planned = tables.batches.all().reduce((sum, { cellsPlanned }) => sum + (cellsPlanned ?? 0), 0);
  const bars = tables.bars.all().length;
  return planned === bars && tables.settings.get('total') === bars;
}

/** Batches in the file as it lies there; -1 where not even that can be read. */
function seenInTheFileAlone(file: string, folder: string): number {
  const alone = join(folder, 'alone.sqlite');
  copyFileSync(file, alone);
  const db = new Database(alone);
  try {
    return Number(db.prepare('SELECT count(*) FROM batch').pluck().get());
  } catch {
    return -1;
  } finally {
    db.close();
  }
}
