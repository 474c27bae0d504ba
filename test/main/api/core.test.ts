import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, onTestFinished, test, vi } from 'vitest';
import { z } from 'zod';
import { type Core, createCore } from '../../../main/api/core.ts';
import { reckonHere } from '../../../main/engine/yield/reckon.ts';
import type { CallReply } from '../../../shared/contract/call.ts';
import type { CopyList } from '../../../shared/contract/copies.ts';
import { PROGRAM_VERSION } from '../../../shared/kernel/program-version.ts';
import { refuse } from '../../../shared/kernel/result.ts';
import { countedIds } from '../../builders/desk.ts';
import { aClock, aComputer, type Computer } from '../../builders/lifecycle.ts';

function aCore(computer: Computer = aComputer()): Core {
  const core = createCore({ clock: aClock(), ids: countedIds(), reckon: reckonHere(), places: computer });
  onTestFinished(() => core.close());
  return core;
}

const ask = (core: Core, path: string, input?: unknown) => core.call({ kind: 'query', path, input });
const tell = (core: Core, path: string, input?: unknown) => core.call({ kind: 'mutation', path, input });
const begin = (core: Core) => tell(core, 'workbook.beginWorkbook', { name: 'Queens', folder: null });

const refusalIn = (reply: CallReply) => (reply.ok ? reply.data : reply.error.data.refusal);

describe('the door', () => {
  test('leads from the first question to a saved setting', async () => {
    const core = aCore();
    expect(await ask(core, 'workbook.getWorkbookState')).toMatchObject({ ok: true, data: { open: null } });
    expect(await begin(core)).toMatchObject({
      ok: true,
      data: { ok: true, value: { open: { name: 'Queens', today: '2026-06-01' } } },
    });
    expect(await tell(core, 'settings.saveSettings', { theme: 'dark' })).toMatchObject({
      ok: true,
      data: { ok: true },
    });
    expect(await ask(core, 'settings.getSettings')).toMatchObject({ ok: true, data: { theme: 'dark' } });
  });

  test('carries nothing that is not plain JSON', async () => {
    const core = aCore();
    await begin(core);
    for (const path of ['workbook.getWorkbookState', 'settings.getSettings']) {
      const reply = await ask(core, path);
      expect(JSON.parse(JSON.stringify(reply))).toEqual(reply);
    }
  });

  test('opens the workbook of the last time at the next start', async () => {
    const computer = aComputer();
    const first = aCore(computer);
    await begin(first);
    await first.close();
    expect(await ask(aCore(computer), 'workbook.getWorkbookState')).toMatchObject({
      data: { open: { name: 'Queens' } },
    });
  });

  test('says which language the open workbook is read in, for the shell’s own menu', async () => {
    const computer = aComputer();
    const core = createCore({
      clock: aClock(),
      ids: countedIds(),
      reckon: reckonHere(),
      places: computer,
      computerLanguage: 'de',
    });
    onTestFinished(() => core.close());
    expect(core.language()).toBe('de');
    await begin(core);
    expect(core.language()).toBe('de');
    await tell(core, 'settings.saveSettings', { language: 'en' });
    expect(core.language()).toBe('en');
    await tell(core, 'workbook.closeWorkbook');
    expect(core.language()).toBe('de');
  });

  test('opens a file that the system hands over, or says why not', async () => {
    const computer = aComputer();
    const core = aCore(computer);
    const file = join(computer.documents, 'notes.ripecell');
    writeFileSync(file, 'no workbook');
    expect(await core.openFile(file)).toEqual(refuse({ kind: 'not-a-workbook', field: 'file', file }));
  });
});

test('the demo opens through the door and answers every question that needs no input', {
  timeout: 60_000,
}, async () => {
  const core = aCore();
  expect(await tell(core, 'workbook.openDemo')).toMatchObject({
    data: { ok: true, value: { open: { kind: 'demo' } } },
  });
  for (const path of QUESTIONS_WITHOUT_INPUT) {
    const reply = await ask(core, path);
    expect(reply.ok, path).toBe(true);
    expect(JSON.parse(JSON.stringify(reply)), path).toEqual(reply);
  }
});

test('labels of the demo come through the door as a PDF', { timeout: 60_000 }, async () => {
  const core = aCore();
  await tell(core, 'workbook.openDemo');
  const sheet = 'a4-3x7-63.5x38.1';
  const offer = await ask(core, 'print.offerLabels', { batchId: null, sheet });
  expect(offer).toMatchObject({ ok: true, data: { startAt: 1 } });
  const batchId = offer.ok ? LabelBatches.parse(offer.data).batches[0]?.id : null;
  const choice = { batchId, boxIds: null, sheet, startAt: 1, qr: false, pencilLine: false, outline: false };
  const printed = await tell(core, 'print.printLabels', choice);
  expect(printed).toMatchObject({ ok: true, data: { ok: true, value: { mediaType: 'application/pdf' } } });
  expect(await tell(core, 'print.printLabels', { ...choice, startAt: 0 })).toMatchObject({
    data: refuse({ kind: 'not-valid', field: 'startAt', expected: 'number' }),
  });
});

const LabelBatches = z.object({ batches: z.array(z.object({ id: z.string() })) });

const QUESTIONS_WITHOUT_INPUT = [
  'workbook.getWorkbookState',
  'today.getToday',
  'batches.listBatches',
  'batches.getBatchForm',
  'hives.listHives',
  'boxes.listBoxes',
  'queens.listQueens',
  'settings.getSettings',
];

describe('without an open workbook', () => {
  test('a change is refused as data', async () => {
    expect(await tell(aCore(), 'settings.saveSettings', { theme: 'dark' })).toEqual({
      ok: true,
      data: refuse({ kind: 'no-workbook-open' }),
    });
  });

  test('a question is answered by an error that carries the refusal', async () => {
    const reply = await ask(aCore(), 'settings.getSettings');
    expect(reply.ok).toBe(false);
    expect(refusalIn(reply)).toEqual({ kind: 'no-workbook-open' });
  });
});

describe('input that does not fit', () => {
  test.each([
    { input: { theme: 'violet' }, field: 'theme', expected: 'choice' },
    { input: { cellsPerBuilder: 'many' }, field: 'cellsPerBuilder', expected: 'number' },
    { input: { cellsPerBuilder: 1.5 }, field: 'cellsPerBuilder', expected: 'number' },
    { input: { cellsPerBuilder: 100_000 }, field: 'cellsPerBuilder', expected: 'number' },
    { input: { workWeekdays: [1, 2, 9] }, field: 'workWeekdays.2', expected: 'number' },
    { input: { awayDays: [7] }, field: 'awayDays.0', expected: 'text' },
    { input: 'dark', field: '', expected: 'text' },
  ])('$input is refused beside "$field"', async ({ input, field, expected }) => {
    const core = aCore();
    await begin(core);
    expect(await tell(core, 'settings.saveSettings', input)).toEqual({
      ok: true,
      data: refuse({ kind: 'not-valid', field, expected }),
    });
  });

  test('a name that is only blanks is refused beside the name', async () => {
    expect(await tell(aCore(), 'workbook.beginWorkbook', { name: '  ', folder: null })).toEqual({
      ok: true,
      data: refuse({ kind: 'not-valid', field: 'name', expected: 'text' }),
    });
  });
});

describe('calls that are no calls', () => {
  test.each([
    null,
    undefined,
    7,
    'workbook.getWorkbookState',
    [],
    {},
    { kind: 'query' },
    { kind: 'subscription', path: 'workbook.getWorkbookState' },
    { kind: 'query', path: 'x'.repeat(500) },
    { kind: 'query', path: 'workbook.getWorkbookState', extra: true },
  ])('%j is turned away', async (request) => {
    expect(await aCore().call(request)).toMatchObject({ ok: false, error: { data: { code: 'BAD_REQUEST' } } });
  });

  test.each(['workbook.noSuch', '__proto__', 'constructor', 'workbook', 'workbook.__proto__', ''])(
    'the name %j leads nowhere',
    async (path) => {
      const reply = await ask(aCore(), path);
      expect(reply.ok).toBe(false);
    },
  );

  test('a change cannot be made by asking', async () => {
    const core = aCore();
    await begin(core);
    expect((await ask(core, 'settings.saveSettings', { theme: 'dark' })).ok).toBe(false);
    expect(await ask(core, 'settings.getSettings')).toMatchObject({ data: { theme: 'system' } });
  });

  test('an error of our own is told to the shell, and says nothing of files, rows or code to the page', async () => {
    const computer = aComputer();
    const reported: unknown[] = [];
    const core = createCore({
      clock: {
        today: () => {
          throw new Error(`secret at ${computer.programData}`);
        },
        now: () => '',
      },
      ids: countedIds(),
      reckon: reckonHere(),
      places: computer,
      report: (error) => reported.push(error),
    });
    onTestFinished(() => core.close());
    const reply = await begin(core);
    expect(reply).toMatchObject({
      ok: false,
      error: { message: 'unexpected error', data: { code: 'INTERNAL_SERVER_ERROR' } },
    });
    expect(JSON.stringify(reply)).not.toMatch(/secret|stack|\.ts/);
    expect(String(reported[0])).toContain('secret');
  });
});

test('the version the program tells is that of its package', () => {
  const packageFile: unknown = JSON.parse(readFileSync(new URL('../../../package.json', import.meta.url), 'utf8'));
  expect(packageFile).toMatchObject({ version: PROGRAM_VERSION });
});

test('a safety copy is made in the course of work, without anybody asking for it', async () => {
  vi.useFakeTimers({ toFake: ['Date', 'setInterval', 'clearInterval'], now: new Date('2026-06-01T18:00:00Z') });
  onTestFinished(() => void vi.useRealTimers());
  const clock = { ...aClock(), now: () => new Date().toISOString() };
  const core = createCore({ clock, ids: countedIds(), reckon: reckonHere(), places: aComputer() });
  onTestFinished(() => core.close());
  await begin(core);
  await tell(core, 'settings.saveSettings', { theme: 'dark' });
  const copies = async () => {
    const reply = await ask(core, 'copies.listCopies');
    return reply.ok ? (reply.data as CopyList).copies.map(({ purpose }) => purpose) : null;
  };
  vi.advanceTimersByTime(29 * 60_000);
  expect(await copies()).toEqual([]);
  vi.advanceTimersByTime(2 * 60_000);
  expect(await copies()).toEqual(['timer']);
  vi.advanceTimersByTime(120 * 60_000);
  expect(await copies()).toEqual(['timer']);
});

test('the first answer, and every one after it, goes before the thorough look, which holds up no saving', async () => {
  vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval'] });
  onTestFinished(() => void vi.useRealTimers());
  const order: string[] = [];
  let end = (): void => {};
  const computer = aComputer();
  const checkFile = () => {
    order.push('look begins');
    return new Promise<'sound'>((resolve) => {
      end = () => resolve('sound');
    });
  };
  const setting = { clock: aClock(), ids: countedIds(), reckon: reckonHere(), places: computer };
  const before = createCore(setting);
  await begin(before);
  await before.close();
  const core = createCore({ ...setting, checkFile });
  onTestFinished(() => core.close());
  expect(await ask(core, 'workbook.getWorkbookState')).toMatchObject({ data: { open: { kind: 'real' } } });
  order.push('first answer');
  vi.advanceTimersByTime(15_000);
  await vi.waitFor(() => expect(order).toContain('look begins'));
  expect(await tell(core, 'settings.saveSettings', { theme: 'dark' })).toMatchObject({ ok: true });
  order.push('saved');
  end();
  await vi.waitFor(() => expect(readdirSync(join(computer.programData, 'looking'))).toEqual([]));
  expect(order).toEqual(['first answer', 'look begins', 'saved']);
});
