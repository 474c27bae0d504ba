// npm start's own words and exit codes: 0 closed, 1 failed, 2 bad option, 3 not built.
import { spawn } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test, vi } from 'vitest';

const root = join(import.meta.dirname, '../..');
const data = mkdtempSync(join(tmpdir(), 'ripecell-start-'));
afterAll(() => rmSync(data, { recursive: true, force: true }));

interface Ended {
  readonly code: number | null;
  readonly said: string;
}

function start(
  options: readonly string[],
  { file = join(root, 'app/start.mjs'), until }: { file?: string; until?: RegExp } = {},
): Promise<Ended> {
  return new Promise((resolve) => {
    const env = { ...process.env, DISPLAY: '', WAYLAND_DISPLAY: '' };
    const child = spawn(process.execPath, [file, ...options], { env, stdio: ['ignore', 'pipe', 'pipe'] });
    let said = '';
    const hear = (part: Buffer) => {
      said += part.toString();
      if (until?.test(said)) child.kill('SIGTERM');
    };
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    child.on('close', (code) => resolve({ code, said }));
  });
}

test('opens in the browser where there is no display, says why, and closes with 0', async () => {
  const { code, said } = await start([`--data=${data}`], { until: /Press Ctrl\+C/ });
  expect(said).toContain('Opening in the web browser because');
  expect(said).toMatch(/Ripecell: http:\/\/127\.0\.0\.1:\d+\/\?key=[0-9a-f]{64}/);
  expect(code).toBe(0);
}, 30_000);

test.each([
  [['--shell=tablet'], '--shell is auto, electron or loopback'],
  [['--port=99999'], '--port is a number from 0 to 65535'],
  [['--surprise'], 'surprise'],
])('exits with 2 on %j', async (options, sentence) => {
  const { code, said } = await start(options);
  expect([code, said]).toEqual([2, expect.stringContaining(sentence)]);
});

test('exits with 1 when the port is taken, and names the remedy', async () => {
  const taken = createServer().listen(0, '127.0.0.1');
  await new Promise((resolve) => taken.once('listening', resolve));
  const { port } = taken.address() as AddressInfo;
  const { code, said } = await start(['--shell=loopback', `--port=${port}`, `--data=${data}`]);
  taken.close();
  expect([code, said]).toEqual([1, expect.stringContaining('choose another with --port')]);
}, 30_000);

test('stops when the program that started it is killed', async () => {
  const starter = `require('node:child_process').spawn(process.execPath, [${JSON.stringify(join(root, 'app/start.mjs'))}, '--shell=loopback', '--no-open', ${JSON.stringify(`--data=${data}`)}], { stdio: 'inherit' }); setInterval(() => {}, 1000)`;
  const parent = spawn(process.execPath, ['-e', starter], { stdio: ['ignore', 'pipe', 'inherit'] });
  const port = await new Promise<number>((resolve) => {
    let said = '';
    parent.stdout.on('data', (part) => {
      said += String(part);
      const found = /127\.0\.0\.1:(\d+)/.exec(said);
      if (found) resolve(Number(found[1]));
    });
  });
  const answers = () =>
    fetch(`http://127.0.0.1:${port}/`).then(
      () => true,
      () => false,
    );
  expect(await answers()).toBe(true);
  parent.kill('SIGKILL');
  await vi.waitFor(async () => expect(await answers()).toBe(false), { timeout: 10_000, interval: 250 });
}, 30_000);

test('exits with 3 where nothing was built', async () => {
  const folder = join(data, 'unbuilt/app');
  mkdirSync(folder, { recursive: true });
  cpSync(join(root, 'app/start.mjs'), join(folder, 'start.mjs'));
  const { code, said } = await start(['--shell=loopback'], { file: join(folder, 'start.mjs') });
  expect([code, said]).toEqual([3, expect.stringContaining('npm run build')]);
});
