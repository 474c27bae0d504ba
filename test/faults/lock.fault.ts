import { type ChildProcess, fork } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Core, createCore } from '../../main/api/core.ts';
import { appRouter } from '../../main/api/router.ts';
import { reckonHere } from '../../main/engine/yield/reckon.ts';
import { dayOfIso } from '../../shared/kernel/day.ts';
import { countedIds } from '../builders/desk.ts';
import type { FaultReport } from './fault-report.ts';
import { aFullWorkbook, MIGRATIONS, settingIn } from './sample-workbook.ts';

const CHILD = fileURLToPath(new URL('./lock-child.ts', import.meta.url));
/** These open another file, or none; after all others. */
const LAST = [
  'copies.restoreCopy',
  'workbook.saveElsewhere',
  'workbook.beginWorkbook',
  'workbook.openDemo',
  'workbook.openPractice',
  'workbook.closeWorkbook',
];

/** Without these the harness would only see refusals. */
const ANSWERED_LEAST = 20;
/** The short form leaves out what reckons long, and half of the inputs. */
const SLOW = /^season\.|^queens\.plan|forecast/i;
const SHORT_INPUTS = [0, 2, 4, 7];

/**
 * After each operation of the program another process tries to write in the workbook and must find it locked: a system
 * of the POSIX kind drops all locks of a process as soon as it closes any handle on the file.
 */
export async function faults({ short }: { readonly short: boolean }): Promise<readonly FaultReport[]> {
  const folder = mkdtempSync(join(tmpdir(), 'ripecell-lock-'));
  const [documents, programData] = [join(folder, 'documents'), join(folder, 'program')];
  mkdirSync(documents);
  const { file, close } = aFullWorkbook(documents, settingIn(folder));
  close();
  const clock = { today: () => dayOfIso('2025-07-10'), now: () => new Date().toISOString() };
  const core = createCore({
    clock,
    ids: countedIds('lock'),
    reckon: reckonHere(),
    places: { documents, programData, migrations: MIGRATIONS },
  });
  const other = fork(CHILD, [file]);
  try {
    await once(other, 'message');
    await core.openFile(file);
    const found = await probeAll(core, other, folder, short);
    return [
      {
        harness: 'the lock after every operation',
        outcome: found.probes === found.locked && found.answered >= ANSWERED_LEAST ? 'passed' : 'failed',
        figures: [
          `lock operations ${found.operations}`,
          `lock operations that answered ${found.answered}`,
          `lock probes ${found.probes}`,
          `lock locked ${found.locked}`,
          ...found.open.map((path) => `lock open after ${path}`),
        ],
      },
      await controlReport(other, file),
    ];
  } finally {
    other.kill();
    await core.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

async function probeAll(core: Core, other: ChildProcess, folder: string, short: boolean) {
  const table = appRouter._def.procedures as unknown as Readonly<Record<string, { _def: { type: string } }>>;
  const paths = Object.keys(table).filter((path) => !LAST.includes(path) && !(short && SLOW.test(path)));
  const every = await inputsFor(core, folder);
  const inputs = short ? every.filter((_input, at) => SHORT_INPUTS.includes(at)) : every;
  const found = { operations: 0, answered: 0, probes: 0, locked: 0, open: [] as string[] };
  for (const path of ['copies.makeCopy', ...paths, 'copies.leaveCopy', 'copies.restoreCopy']) {
    const kind = table[path]?._def.type === 'query' ? 'query' : 'mutation';
    let isAnswered = false;
    for (const input of path === 'copies.restoreCopy' ? await restoreInput(core) : inputs) {
      const reply = await core.call({ kind, path, input });
      isAnswered ||= reply.ok && !(isResult(reply.data) && !reply.data.ok);
      found.probes += 1;
      if ((await probe(other)) === 'locked') found.locked += 1;
      else found.open.push(path);
    }
    found.operations += 1;
    if (isAnswered) found.answered += 1;
  }
  return found;
}

/** Inputs that fit many operations; whatever does not fit is refused, which must not drop the lock either. */
async function inputsFor(core: Core, folder: string): Promise<readonly unknown[]> {
  await core.call({ kind: 'mutation', path: 'copies.makeCopy' });
  const data = async (path: string): Promise<unknown> => {
    const reply = await core.call({ kind: 'query', path });
    return reply.ok ? reply.data : null;
  };
  const [batch] = (await data('batches.listBatches')) as readonly { id: string }[];
  const { hives } = (await data('hives.listHives')) as { hives: readonly { id: string }[] };
  const { copies } = (await data('copies.listCopies')) as { copies: readonly { id: string }[] };
  const [batchId, colonyId, copy] = [batch?.id, hives[0]?.id, copies[0]?.id];
  const everything = {
    ...{ batchId, colonyId, copy, folder: join(folder, 'documents'), season: 2025, by: 'method', stage: 'take' },
    ...{ method: 'larva-grafting', comb: 'drawn', copyId: null, id: 'new-id', name: 'New', note: null, text: 'K01' },
  };
  return [undefined, {}, { batchId }, { id: batchId }, { colonyId }, { id: colonyId }, { copy }, everything];
}

async function restoreInput(core: Core): Promise<readonly unknown[]> {
  const reply = await core.call({ kind: 'query', path: 'copies.listCopies' });
  const copies = reply.ok ? (reply.data as { copies: readonly { id: string }[] }).copies : [];
  return [{ copy: copies[0]?.id ?? '', folder: null }];
}

/** Reading the file past SQLite drops the lock; a probe that does not see that sees nothing. */
async function controlReport(other: ChildProcess, file: string): Promise<FaultReport> {
  const before = await probe(other);
  readFileSync(file);
  const after = await probe(other);
  return {
    harness: 'the lock control: reading the open file past SQLite must open it to others',
    outcome: before === 'locked' && after === 'open' ? 'passed' : 'failed',
    figures: [`lock control ${before} before, ${after} after`],
  };
}

async function probe(other: ChildProcess): Promise<unknown> {
  const answered = once(other, 'message');
  other.send('probe');
  return (await answered)[0];
}

const isResult = (data: unknown): data is { readonly ok: boolean } =>
  typeof data === 'object' && data !== null && 'ok' in data;
