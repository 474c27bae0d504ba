// A second start, a double click on a workbook, and a folder for a trial, through the double and the built main entry.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { CALL_CHANNEL, type CallReply } from '../../../shared/contract/call.ts';
import { app, log } from '../../double/electron.ts';
import { OUT } from '../../journeys/doors.ts';

const trial = mkdtempSync(join(tmpdir(), 'ripecell-trial-'));
const PAGE = 'app://ripecell/';

beforeAll(async () => {
  process.argv.push(`--ripecell-data=${trial}`);
  await import(pathToFileURL(join(OUT, 'main/electron.js')).href);
  await vi.waitFor(() => expect([...log.errors, log.windows.length]).toEqual([1]), { timeout: 30_000 });
});
afterAll(() => {
  app.quit();
  rmSync(trial, { recursive: true, force: true });
});

const ask = async (kind: 'query' | 'mutation', path: string, input?: unknown): Promise<unknown> => {
  const answer = log.handlers.get(CALL_CHANNEL) as unknown as (event: unknown, request: unknown) => Promise<CallReply>;
  const event = { sender: log.windows[0]?.webContents, senderFrame: { url: PAGE, parent: null } };
  const reply = await answer(event, { kind, path, input });
  if (!reply.ok) throw new Error(reply.error.message);
  return reply.data;
};
const loads = () => log.order.filter((one) => one === 'loadURL').length;
const openName = async () =>
  ((await ask('query', 'workbook.getWorkbookState')) as { open: { name: string } }).open.name;

test('a folder for a trial holds workbooks and settings, and is set before the lock is taken', async () => {
  expect(log.paths).toEqual({ userData: join(trial, 'program') });
  expect(log.order.indexOf('setPath')).toBe(0);
  expect(await ask('query', 'workbook.getWorkbookState')).toMatchObject({
    usualFolder: join(trial, 'documents'),
  });
});

test('a second start brings the window forward, and opens nothing it was not given', async () => {
  await ask('mutation', 'workbook.beginWorkbook', { name: 'First', folder: null });
  await ask('mutation', 'workbook.beginWorkbook', { name: 'Second', folder: null });
  const before = loads();
  app.emit('second-instance', {}, ['ripecell', '--flag.ripecell'], trial);
  expect(log.order.at(-1)).toBe('focus');
  expect([log.errors, loads(), await openName()]).toEqual([[], before, 'Second']);
});

test('a second start with a workbook opens it, named from where the person stood, on a page loaded anew', async () => {
  const before = loads();
  app.emit('second-instance', {}, ['ripecell', 'First.ripecell'], join(trial, 'documents'));
  await vi.waitFor(() => expect(loads()).toBe(before + 1), { timeout: 30_000 });
  expect([log.errors, log.windows[0]?.url, await openName()]).toEqual([[], PAGE, 'First']);
});

test('a double click on a workbook opens it in the window that is there', async () => {
  const before = loads();
  const preventDefault = vi.fn();
  app.emit('open-file', { preventDefault }, join(trial, 'documents/Second.ripecell'));
  await vi.waitFor(() => expect(loads()).toBe(before + 1), { timeout: 30_000 });
  expect([preventDefault.mock.calls.length, await openName(), log.windows.length]).toEqual([1, 'Second', 1]);
});

test('a file that cannot be opened is named, and the open workbook stays on its page', async () => {
  const before = loads();
  const missing = join(trial, 'gone.ripecell');
  app.emit('second-instance', {}, ['ripecell', missing], trial);
  await vi.waitFor(() => expect(log.errors).toHaveLength(1), { timeout: 30_000 });
  expect(log.errors[0]).toContain(missing);
  expect([loads(), await openName()]).toEqual([before, 'Second']);
});
