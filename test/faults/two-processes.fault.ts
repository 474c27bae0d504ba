import { type ChildProcess, fork } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createWorkbookFile } from '../../main/workbook/create-workbook.ts';
import { readMigrations } from '../../main/workbook/migrations.ts';
import type { FaultReport } from './fault-report.ts';

const CHILD = fileURLToPath(new URL('./race-child.ts', import.meta.url));
const MIGRATIONS = fileURLToPath(new URL('../../main/workbook/migrations', import.meta.url));
const CONTROL_ROUNDS = 5;

/** Two processes open one workbook at the same moment: exactly one may win. */
export async function faults({ short }: { readonly short: boolean }): Promise<readonly FaultReport[]> {
  const rounds = short ? 20 : 200;
  const folder = mkdtempSync(join(tmpdir(), 'ripecell-race-'));
  const file = join(folder, 'race.ripecell');
  const setting = { migrations: readMigrations(MIGRATIONS), safetyFolder: folder, now: () => new Date().toISOString() };
  const created = createWorkbookFile({ file, name: 'Race', kind: 'real' }, setting);
  if (!created.ok) throw new Error(created.refusal.kind);
  created.value.close();
  const racers = [1, 2].map(() => fork(CHILD, [file, MIGRATIONS, folder]));
  try {
    await Promise.all(racers.map((racer) => once(racer, 'message')));
    const locked = await race(racers, 'open', rounds);
    const unlocked = await race(racers, 'open-unlocked', CONTROL_ROUNDS);
    return [
      {
        harness: 'two processes, one workbook',
        outcome: locked.oneWinner === rounds ? 'passed' : 'failed',
        figures: [
          `race rounds ${rounds}`,
          `race oneWinner ${locked.oneWinner}`,
          `race otherAnswers ${locked.otherAnswers}`,
        ],
      },
      {
        harness: 'two processes control: without the lock both must win',
        outcome: unlocked.oneWinner === 0 ? 'passed' : 'failed',
        figures: [`race control rounds with two winners ${CONTROL_ROUNDS - unlocked.oneWinner} of ${CONTROL_ROUNDS}`],
      },
    ];
  } finally {
    for (const racer of racers) racer.kill();
    rmSync(folder, { recursive: true, force: true });
  }
}

async function race(racers: readonly ChildProcess[], message: string, rounds: number) {
  let oneWinner = 0;
  let otherAnswers = 0;
  for (let round = 0; round < rounds; round += 1) {
    const answers = await Promise.all(racers.map((racer) => answerTo(racer, message)));
    const winners = answers.filter((answer) => answer === 'opened').length;
    if (winners === 1 && answers.includes('workbook-open-elsewhere')) oneWinner += 1;
    else if (winners !== 2) otherAnswers += 1;
    await Promise.all(racers.map((racer) => answerTo(racer, 'close')));
  }
  return { oneWinner, otherAnswers };
}

async function answerTo(racer: ChildProcess, message: string): Promise<unknown> {
  const answered = once(racer, 'message');
  racer.send(message);
  const [answer] = await answered;
  return answer;
}
