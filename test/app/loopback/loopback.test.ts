// The shell for a browser against callers it must turn away. Sources of the list: NCC Group on DNS rebinding, the Jupyter
// server's rules for local hosts, the Vite notice on missing origin checks (see the notes in DEVELOPERS.md).
import { mkdtempSync, rmSync } from 'node:fs';
import { connect } from 'node:net';
import { networkInterfaces, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Loopback, startLoopback } from '../../../app/loopback/loopback.ts';
import { OUT } from '../../journeys/doors.ts';
import { PROBES, send } from './probes.ts';

let shell: Loopback;
let port: number;
let cookie: string;
const data = mkdtempSync(join(tmpdir(), 'ripecell-loopback-'));

const get = (path: string, headers = '') =>
  send(port, `GET ${path} HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\n${headers}Connection: close\r\n\r\n`);

beforeAll(async () => {
  shell = await startLoopback({ out: OUT, data });
  port = Number(new URL(shell.origin).port);
});
afterAll(async () => {
  await shell.close();
  rmSync(data, { recursive: true, force: true });
});

describe('the door of the browser shell', () => {
  test('opens once for the one-time address and gives a strict cookie', async () => {
    const { pathname, search } = new URL(shell.url);
    const first = await get(pathname + search);
    expect(first.status).toBe(303);
    const setCookie = /set-cookie: (.*)/i.exec(first.head)?.[1] ?? '';
    expect(setCookie).toMatch(new RegExp(`^ripecell_${port}=[0-9a-f]{64}; HttpOnly; SameSite=Strict; Path=/$`));
    cookie = setCookie.split(';')[0] ?? '';
    expect((await get(pathname + search)).status).toBe(403);
    expect((await get('/', `Cookie: ${cookie}\r\n`)).status).toBe(200);
  });

  test.each(PROBES.map((probe) => [probe.name, probe] as const))('turns away: %s', async (_name, probe) => {
    const answer = await send(port, probe.raw(port, cookie));
    expect(probe.expected).toContain(answer.status);
    expect(answer.body).not.toContain('"ok":true');
    expect(answer.head).not.toMatch(/access-control/i);
    expect(answer.body).not.toMatch(/at .*\.(js|ts):\d+/);
    // 400 and 431 are Node's own answers, before our code is asked; 0 is a line that was cut.
    if (![0, 400, 431].includes(answer.status)) expect(answer.head.toLowerCase()).toContain("default-src 'none'");
  });

  test('answers the page that came in rightly', async () => {
    const body = JSON.stringify({ kind: 'query', path: 'workbook.getWorkbookState' });
    const headers = `Host: 127.0.0.1:${port}\r\nOrigin: ${shell.origin}\r\nCookie: ${cookie}\r\nContent-Type: application/json\r\n`;
    const answer = await send(
      port,
      `POST /call HTTP/1.1\r\n${headers}Content-Length: ${body.length}\r\nConnection: close\r\n\r\n${body}`,
    );
    expect(answer.status).toBe(200);
    expect(JSON.parse(answer.body)).toMatchObject({ ok: true, data: { open: null } });
    for (const header of [
      'content-security-policy',
      'x-content-type-options: nosniff',
      'cache-control: no-store',
      'referrer-policy: no-referrer',
    ])
      expect(answer.head.toLowerCase()).toContain(header);
  });

  test('lets a file the person hands over in by an entrance of its own, and nobody else', async () => {
    const body = JSON.stringify({ kind: 'query', path: 'workbook.getWorkbookState', input: 'x'.repeat(2 << 20) });
    const headers = `Host: 127.0.0.1:${port}\r\nOrigin: ${shell.origin}\r\nContent-Type: application/json\r\n`;
    const ask = (more: string) =>
      send(
        port,
        `POST /call-with-file HTTP/1.1\r\n${headers}${more}Content-Length: ${body.length}\r\nConnection: close\r\n\r\n${body}`,
      );
    expect((await ask(`Cookie: ${cookie}\r\n`)).status).toBe(200);
    expect([403, 0]).toContain((await ask('')).status);
    const tooLarge = `POST /call-with-file HTTP/1.1\r\n${headers}Cookie: ${cookie}\r\nConnection: close\r\n`;
    const length = 31 * 1024 * 1024;
    const answer = await send(port, `${tooLarge}Content-Length: ${length}\r\n\r\n"${'x'.repeat(length - 1)}`);
    expect([413, 0]).toContain(answer.status);
  });

  test('listens on the loopback address only', async () => {
    const others = Object.values(networkInterfaces())
      .flat()
      .flatMap((one) => (one && one.family === 'IPv4' && !one.internal ? [one.address] : []));
    for (const host of [...others, '::1']) expect(await canConnect(host), host).toBe(false);
    expect(await canConnect('127.0.0.1')).toBe(true);
  });

  test('answers the page although 200 callers hold a line open and say nothing', async () => {
    const idle = Array.from({ length: 200 }, () => connect({ host: '127.0.0.1', port }).on('error', () => {}));
    try {
      await new Promise((resolve) => setTimeout(resolve, 200));
      let status: number | undefined;
      // The silent ones are cut after the time allowed for headers (3 s); until then lines may be scarce.
      for (let attempt = 0; attempt < 60 && status !== 200; attempt += 1) {
        status = (await get('/', `Cookie: ${cookie}\r\n`).catch(() => null))?.status;
        if (status !== 200) await new Promise((resolve) => setTimeout(resolve, 200));
      }
      expect(status).toBe(200);
    } finally {
      for (const socket of idle) socket.destroy();
    }
  }, 30_000);

  test('keeps 32 lines and no more', async () => {
    const lines = Array.from({ length: 60 }, () => connect({ host: '127.0.0.1', port }).on('error', () => {}));
    try {
      let cut = 0;
      for (const line of lines) line.on('close', () => (cut += 1)).resume();
      // Well before the time allowed for headers (3 s) would cut the silent ones of the 32.
      await expect.poll(() => cut, { timeout: 2_500, interval: 50 }).toBeGreaterThanOrEqual(28);
      expect(cut).toBeLessThan(60);
    } finally {
      for (const line of lines) line.destroy();
    }
  });

  test('cuts a caller that drips its headers, and still answers others', async () => {
    const slow = connect({ host: '127.0.0.1', port }, () => slow.write('GET / HTTP/1.1\r\nHost: '));
    const closed = new Promise<void>((resolve) => {
      slow.on('close', () => resolve());
      slow.on('error', () => resolve());
      slow.resume();
    });
    expect((await get('/', `Cookie: ${cookie}\r\n`)).status).toBe(200);
    await closed;
  }, 20_000);
});

function canConnect(host: string): Promise<boolean> {
  return new Promise((resolve) => {
    const socket = connect({ host, port }, () => {
      socket.destroy();
      resolve(true);
    });
    socket.on('error', () => resolve(false));
  });
}
