import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type Database from 'better-sqlite3';
import { reckonHere } from '../../main/engine/yield/reckon.ts';
import { connectForReading } from '../../main/workbook/connect.ts';
import { createWorkbookFile } from '../../main/workbook/create-workbook.ts';
import { readMigrations } from '../../main/workbook/migrations.ts';
import { openWorkbookFile } from '../../main/workbook/open-workbook.ts';
import type { Workbook } from '../../main/workbook/workbook.ts';
import { dayOfIso } from '../../shared/kernel/day.ts';
import { countedIds, MIGRATIONS_FOLDER } from '../builders/desk.ts';
import { Draw } from '../builders/draw.ts';
import { layGround, randomAct } from '../builders/random-act.ts';
import { aWatchedDesk, dataDigest } from '../builders/watched-workbook.ts';
import type { FaultReport } from './fault-report.ts';

const STEPS = 50;
const CONTROL_WALKS = 10;

/** Random walks of operations, all taken back and all done again: the rows must be what they were, bit for bit. */
export async function faults({ short }: { readonly short: boolean }): Promise<readonly FaultReport[]> {
  const walks = short ? 25 : 500;
  const restarts = short ? 2 : 20;
  const sound = walkAndTurn(walks, () => {});
  const blind = walkAndTurn(CONTROL_WALKS, (db) => {
    db.exec('DROP TRIGGER temp."journal_UPDATE_count"; DROP TRIGGER temp."journal_UPDATE_box_look"');
  });
  const afterRestart = walkThroughRestarts(restarts);
  return [
    {
      harness: 'undo of random walks',
      outcome: sound.wrong === 0 && sound.made >= (walks * STEPS) / 4 ? 'passed' : 'failed',
      figures: [
        `undo walks ${walks} of ${STEPS} operations`,
        `undo operations that changed something ${sound.made}`,
        `undo digests compared ${sound.compared}`,
        `undo digests different ${sound.wrong}`,
      ],
    },
    {
      harness: 'undo control: a journal that misses changed counts and looks must be noticed',
      outcome: blind.wrong > 0 ? 'passed' : 'failed',
      figures: [`undo control digests different ${blind.wrong} of ${blind.compared}`],
    },
    {
      harness: 'undo after closing and opening',
      outcome: afterRestart === 0 ? 'passed' : 'failed',
      figures: [`undo restarts ${restarts}`, `undo digests different after a restart ${afterRestart}`],
    },
  ];
}

interface Turned {
  made: number;
  compared: number;
  wrong: number;
}

/** Every step on the way back and on the way forth is compared with the digest it had on the way. */
function walkAndTurn(walks: number, spoil: (db: Database.Database) => void): Turned {
  const turned: Turned = { made: 0, compared: 0, wrong: 0 };
  for (let seed = 1; seed <= walks; seed += 1) {
    const { desk, db } = aWatchedDesk();
    layGround(desk);
    spoil(db);
    const digests = [dataDigest(db)];
    const draw = new Draw(seed);
    for (let step = 0; step < STEPS; step += 1) {
      randomAct(desk, draw);
      const digest = dataDigest(db);
      if (digest !== digests.at(-1)) digests.push(digest);
    }
    turned.made += digests.length - 1;
    const compare = (digest: string | undefined) => {
      turned.compared += 1;
      if (dataDigest(db) !== digest) turned.wrong += 1;
    };
    for (let at = digests.length - 2; desk.workbook.undo().ok; at -= 1) compare(digests[at]);
    compare(digests[0]);
    for (let at = 1; desk.workbook.redo().ok; at += 1) compare(digests[at]);
    compare(digests.at(-1));
    desk.workbook.close();
  }
  return turned;
}

/** Half a walk, a restart, the other half, a restart, all taken back, a restart, all done again. */
function walkThroughRestarts(walks: number): number {
  const folder = mkdtempSync(join(tmpdir(), 'ripecell-undo-'));
  const setting = {
    migrations: readMigrations(MIGRATIONS_FOLDER),
    safetyFolder: join(folder, 'safety'),
    now: () => new Date().toISOString(),
  };
  const open = (file: string): Workbook => {
    const opened = openWorkbookFile(file, setting);
    if (!opened.ok) throw new Error(opened.refusal.kind);
    return opened.value;
  };
  let wrong = 0;
  try {
    for (let seed = 1; seed <= walks; seed += 1) {
      const file = join(folder, `${seed}.ripecell`);
      const created = createWorkbookFile({ file, name: 'Undo', kind: 'real' }, setting);
      if (!created.ok) throw new Error(created.refusal.kind);
      created.value.close();
      const draw = new Draw(seed);
      const ids = countedIds();
      const during = (use: (workbook: Workbook) => void): string => {
        const workbook = open(file);
        use(workbook);
        workbook.close();
        return digestOf(file);
      };
      const deskOf = (workbook: Workbook) => ({
        workbook,
        today: dayOfIso('2026-06-20'),
        ids,
        reckon: reckonHere(),
        computerLanguage: 'en' as const,
      });
      const walk = (workbook: Workbook) => {
        for (let step = 0; step < STEPS / 2; step += 1) randomAct(deskOf(workbook), draw);
      };
      const before = during((workbook) => layGround(deskOf(workbook)));
      during(walk);
      const full = during(walk);
      if (during((workbook) => turnAll(() => workbook.undo().ok)) !== before) wrong += 1;
      if (during((workbook) => turnAll(() => workbook.redo().ok)) !== full) wrong += 1;
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  return wrong;
}

function turnAll(turn: () => boolean): void {
  while (turn());
}

function digestOf(file: string): string {
  const db = connectForReading(file);
  try {
    return dataDigest(db);
  } finally {
    db.close();
  }
}
