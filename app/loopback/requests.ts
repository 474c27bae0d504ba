import type { IncomingMessage, ServerResponse } from 'node:http';
import type { Core } from '../../main/api/core.ts';
import { answerOf, type PageFile, SECURITY_HEADERS } from '../adapters/page-files.ts';
import type { Doorkeeper } from './doorkeeper.ts';

export interface House {
  readonly core: Core;
  readonly files: ReadonlyMap<string, PageFile>;
  readonly doorkeeper: Doorkeeper;
}

/** Where calls arrive, and the largest body there: a form or a grid row, or a file the person hands over. */
const CALL_PATHS: ReadonlyMap<string, number> = new Map([
  ['/call', 1024 * 1024],
  ['/call-with-file', 30 * 1024 * 1024],
]);

/** Host first, then who is asking, then what. Every answer carries the same headers; none tells a path or a stack. */
export async function answerRequest(house: House, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const { doorkeeper } = house;
  if (!doorkeeper.isOurHost(request)) return end(response, 421);
  const changing = request.method === 'POST';
  if (!changing && request.method !== 'GET' && request.method !== 'HEAD') return end(response, 405);
  if (!doorkeeper.isFromOurPage(request.headers, changing)) return end(response, 403);
  const url = addressOf(request);
  if (!url) return end(response, 404);
  if (!changing) return answerPage(house, url, request, response);
  if (!doorkeeper.hasCookie(request.headers)) return end(response, 403);
  const bodyLimit = CALL_PATHS.get(url.pathname);
  if (bodyLimit === undefined) return end(response, 404);
  if (request.headers['content-type'] !== 'application/json') return end(response, 415);
  return answerCall(house.core, request, response, bodyLimit);
}

function answerPage({ doorkeeper, files }: House, url: URL, request: IncomingMessage, response: ServerResponse): void {
  const key = url.searchParams.get('key');
  const file = files.get(url.pathname);
  if (url.pathname === '/' && key !== null) {
    if (doorkeeper.spendKey(key)) end(response, 303, { location: '/', 'set-cookie': doorkeeper.setCookie() });
    else end(response, 403);
  } else if (!doorkeeper.hasCookie(request.headers)) end(response, 403);
  else if (!file) end(response, 404);
  else sendFile(file, request, response);
}

function sendFile(file: PageFile, request: IncomingMessage, response: ServerResponse): void {
  const { headers, bytes } = answerOf(file);
  response.writeHead(200, { ...headers, 'content-length': bytes.length });
  response.end(request.method === 'HEAD' ? undefined : bytes);
}

async function answerCall(
  core: Core,
  request: IncomingMessage,
  response: ServerResponse,
  bodyLimit: number,
): Promise<void> {
  const body = await readBody(request, bodyLimit);
  if (body === null) return end(response, 413, { connection: 'close' });
  let asked: unknown;
  try {
    asked = JSON.parse(body);
  } catch {
    return end(response, 400);
  }
  const reply = isShellCall(asked) ? { ok: true, data: { available: false } } : await core.call(asked);
  const bytes = Buffer.from(JSON.stringify(reply));
  response.writeHead(200, { ...SECURITY_HEADERS, 'content-type': 'application/json', 'content-length': bytes.length });
  response.end(bytes);
}

/** What only the desktop window can do; the page then uses what a browser offers. */
const isShellCall = (asked: unknown): boolean =>
  typeof asked === 'object' &&
  asked !== null &&
  'path' in asked &&
  typeof asked.path === 'string' &&
  asked.path.startsWith('shell.');

/** The text of the body, or null once it grows past the limit, whatever its headers claim. */
async function readBody(request: IncomingMessage, limit: number): Promise<string | null> {
  const parts: Buffer[] = [];
  let length = 0;
  try {
    for await (const part of request) {
      length += part.length;
      if (length > limit) return null;
      parts.push(part);
    }
  } catch {
    return null;
  }
  return Buffer.concat(parts).toString('utf8');
}

/** The address asked for, when it is a plain path; encoded slashes, dots, backslashes and NUL are not. */
function addressOf(request: IncomingMessage): URL | null {
  const path = request.url ?? '';
  if (!path.startsWith('/') || /%2f|%5c|%2e|%00|\\|\/\.\.?(\/|$)/i.test(path)) return null;
  try {
    return new URL(path, 'http://127.0.0.1');
  } catch {
    return null;
  }
}

function end(response: ServerResponse, status: number, headers: Record<string, string> = {}): void {
  response.writeHead(status, { ...SECURITY_HEADERS, 'content-type': 'text/plain', ...headers });
  response.end();
}
