import { mkdtempSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startLoopback } from '../../app/loopback/loopback.ts';
import { PROBES, type Probe, send } from '../app/loopback/probes.ts';
import type { FaultReport } from './fault-report.ts';

const OUT = join(import.meta.dirname, '../../out');
const STATE = JSON.stringify({ kind: 'query', path: 'workbook.getWorkbookState' });

/** Hostile callers at the browser shell, over raw sockets: none may get a page or an answer of the workbook. */
export async function faults({ short }: { readonly short: boolean }): Promise<readonly FaultReport[]> {
  const rounds = short ? 1 : 20;
  const data = mkdtempSync(join(tmpdir(), 'ripecell-probes-'));
  const shell = await startLoopback({ out: OUT, data });
  const port = Number(new URL(shell.origin).port);
  const open = await startOpenDoor();
  try {
    const cookie = await comeIn(shell.url, port);
    const letIn: string[] = [];
    for (let round = 0; round < rounds; round += 1) letIn.push(...(await probesLetIn(port, cookie)));
    const answersItsPage = await asksRightly(port, shell.origin, cookie);
    const openPort = (open.address() as AddressInfo).port;
    const missed = PROBES.length - (await probesLetIn(openPort, 'ripecell=x')).length;
    return [
      {
        harness: 'hostile callers at the browser shell',
        outcome: letIn.length === 0 && answersItsPage ? 'passed' : 'failed',
        figures: [
          `probes ${PROBES.length * rounds}`,
          `probes let in ${letIn.length}${letIn.length > 0 ? `: ${[...new Set(letIn)].join('; ')}` : ''}`,
          `probes own page answered afterwards ${answersItsPage ? 'yes' : 'no'}`,
        ],
      },
      {
        harness: 'hostile callers control: a door that lets everybody in must be noticed',
        outcome: missed <= REFUSED_BY_NODE ? 'passed' : 'failed',
        figures: [`probes control noticed ${PROBES.length - missed} of ${PROBES.length}`],
      },
    ];
  } finally {
    open.close();
    open.closeAllConnections();
    await shell.close();
    rmSync(data, { recursive: true, force: true });
  }
}

/** Node itself turns away, without our help: no Host under HTTP/1.1, a header beyond its own limit, a length beside chunks. */
const REFUSED_BY_NODE = 3;

async function probesLetIn(port: number, cookie: string): Promise<readonly string[]> {
  const letIn: string[] = [];
  for (const probe of PROBES) if (!(await turnedAway(probe, port, cookie))) letIn.push(probe.name);
  return letIn;
}

async function turnedAway(probe: Probe, port: number, cookie: string): Promise<boolean> {
  const { status, head, body } = await send(port, probe.raw(port, cookie));
  return probe.expected.includes(status) && !body.includes('"ok":true') && !/access-control/i.test(head);
}

async function comeIn(url: string, port: number): Promise<string> {
  const { pathname, search } = new URL(url);
  const raw = `GET ${pathname}${search} HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nConnection: close\r\n\r\n`;
  const cookie = /set-cookie: ([^;]+)/i.exec((await send(port, raw)).head)?.[1];
  if (!cookie) throw new Error('the one-time address gave no cookie');
  return cookie;
}

async function asksRightly(port: number, origin: string, cookie: string): Promise<boolean> {
  const headers = `Host: 127.0.0.1:${port}\r\nOrigin: ${origin}\r\nCookie: ${cookie}\r\nContent-Type: application/json\r\n`;
  const rest = `Content-Length: ${STATE.length}\r\nConnection: close\r\n\r\n${STATE}`;
  const { status, body } = await send(port, `POST /call HTTP/1.1\r\n${headers}${rest}`);
  return status === 200 && body.includes('"ok":true');
}

/** The control: a server without any door, as one might write it in a hurry. */
function startOpenDoor(): Promise<Server> {
  const server = createServer((request, response) => {
    request.resume();
    response.setHeader('access-control-allow-origin', '*');
    response.end('{"ok":true}');
  });
  server.on('upgrade', (_request, socket) => socket.end('HTTP/1.1 101 Switching Protocols\r\n\r\n'));
  return new Promise((resolve) => server.listen(0, '127.0.0.1', () => resolve(server)));
}
