// Callers that must be turned away by the loopback shell, over raw sockets so that nothing tidies them up on the way.
import { connect } from 'node:net';

export interface Probe {
  readonly name: string;
  /** Status codes that count as turned away; 0 = the line was cut without an answer. */
  readonly expected: readonly number[];
  readonly raw: (port: number, cookie: string) => string;
}

const HOST = (port: number) => `Host: 127.0.0.1:${port}\r\n`;
const ORIGIN = (port: number) => `Origin: http://127.0.0.1:${port}\r\n`;
const COOKIE = (cookie: string) => `Cookie: ${cookie}\r\n`;
const BODY = JSON.stringify({ kind: 'query', path: 'workbook.getWorkbookState' });
const get = (path: string, headers: string) => `GET ${path} HTTP/1.1\r\n${headers}Connection: close\r\n\r\n`;
const post = (headers: string, body = BODY, path = '/call') =>
  `POST ${path} HTTP/1.1\r\n${headers}Content-Length: ${Buffer.byteLength(body)}\r\nConnection: close\r\n\r\n${body}`;
/** A body cut in pieces of 64 kB, each with its own length in hexadecimal (RFC 9112 section 7.1). */
const chunked = (body: string): string =>
  `${(body.match(/[\s\S]{1,65536}/g) ?? []).map((part) => `${part.length.toString(16)}\r\n${part}\r\n`).join('')}0\r\n\r\n`;
const JSON_TYPE = 'Content-Type: application/json\r\n';

const wrongHosts = [
  'evil.example',
  'localhost',
  '127.0.0.1',
  '127.0.0.1:1',
  '[::1]',
  '127.0.0.1.evil.example',
  '0.0.0.0',
  '',
];
const wrongOrigins = [
  'null',
  'http://evil.example',
  'http://localhost',
  'https://127.0.0.1',
  'http://127.0.0.1',
  'file://',
];
const wrongPaths = [
  '/..%2f..%2fpackage.json',
  '/%2e%2e/main/loopback.js',
  '/..\\..\\package.json',
  '/%00',
  '/%5c%5cpackage.json',
  '/../package.json',
  '/nothing.js',
];

export const PROBES: readonly Probe[] = [
  ...wrongHosts.map(
    (host): Probe => ({
      name: `host "${host}"`,
      expected: [421, 400],
      raw: (_port, cookie) => get('/', `Host: ${host}\r\n${COOKIE(cookie)}`),
    }),
  ),
  { name: 'no host', expected: [400, 421], raw: (_port, cookie) => get('/', COOKIE(cookie)) },
  {
    name: 'two hosts',
    expected: [421, 400],
    raw: (port, cookie) => get('/', `${HOST(port)}Host: evil.example\r\n${COOKIE(cookie)}`),
  },
  {
    name: 'HTTP/1.0 without host',
    expected: [421, 400],
    raw: (_port, cookie) => `GET / HTTP/1.0\r\n${COOKIE(cookie)}\r\n`,
  },
  { name: 'page without cookie', expected: [403], raw: (port) => get('/', HOST(port)) },
  {
    name: 'page with a made-up cookie',
    expected: [403],
    raw: (port) => get('/', `${HOST(port)}${COOKIE(`ripecell_${port}=${'0'.repeat(64)}`)}`),
  },
  {
    name: 'page with the cookie twice',
    expected: [403],
    raw: (port, cookie) => get('/', `${HOST(port)}${COOKIE(`${cookie}; ${cookie}`)}`),
  },
  { name: 'a wrong key', expected: [403], raw: (port) => get('/?key=wrong', HOST(port)) },
  { name: 'an empty key', expected: [403], raw: (port) => get('/?key=', HOST(port)) },
  { name: 'call without cookie', expected: [403], raw: (port) => post(`${HOST(port)}${ORIGIN(port)}${JSON_TYPE}`) },
  {
    name: 'call without origin',
    expected: [403],
    raw: (port, cookie) => post(`${HOST(port)}${COOKIE(cookie)}${JSON_TYPE}`),
  },
  ...wrongOrigins.map(
    (origin): Probe => ({
      name: `origin ${origin}`,
      expected: [403],
      raw: (port, cookie) => post(`${HOST(port)}${COOKIE(cookie)}${JSON_TYPE}Origin: ${origin}\r\n`),
    }),
  ),
  ...['cross-site', 'same-site', 'none'].map(
    (site): Probe => ({
      name: `call fetched ${site}`,
      expected: [403],
      raw: (port, cookie) =>
        post(`${HOST(port)}${ORIGIN(port)}${COOKIE(cookie)}${JSON_TYPE}Sec-Fetch-Site: ${site}\r\n`),
    }),
  ),
  ...['cross-site', 'same-site'].map(
    (site): Probe => ({
      name: `page fetched ${site}`,
      expected: [403],
      raw: (port, cookie) => get('/', `${HOST(port)}${COOKIE(cookie)}Sec-Fetch-Site: ${site}\r\n`),
    }),
  ),
  ...['text/plain', 'application/x-www-form-urlencoded', 'application/json; charset=utf-8'].map(
    (type): Probe => ({
      name: `call as ${type}`,
      expected: [415],
      raw: (port, cookie) => post(`${HOST(port)}${ORIGIN(port)}${COOKIE(cookie)}Content-Type: ${type}\r\n`),
    }),
  ),
  ...['OPTIONS', 'PUT', 'DELETE', 'TRACE'].map(
    (method): Probe => ({
      name: method,
      expected: [405],
      raw: (port, cookie) => `${method} /call HTTP/1.1\r\n${HOST(port)}${COOKIE(cookie)}Connection: close\r\n\r\n`,
    }),
  ),
  {
    name: 'call of another path',
    expected: [404],
    raw: (port, cookie) => post(`${HOST(port)}${ORIGIN(port)}${COOKIE(cookie)}${JSON_TYPE}`, BODY, '/index.html'),
  },
  {
    name: 'call that is no JSON',
    expected: [400],
    raw: (port, cookie) => post(`${HOST(port)}${ORIGIN(port)}${COOKIE(cookie)}${JSON_TYPE}`, '{'),
  },
  {
    name: 'two megabytes',
    expected: [413, 0],
    raw: (port, cookie) =>
      post(`${HOST(port)}${ORIGIN(port)}${COOKIE(cookie)}${JSON_TYPE}`, `"${'x'.repeat(2 << 20)}"`),
  },
  {
    name: 'two megabytes in chunks, without a length',
    expected: [413, 0],
    raw: (port, cookie) =>
      `POST /call HTTP/1.1\r\n${HOST(port)}${ORIGIN(port)}${COOKIE(cookie)}${JSON_TYPE}Transfer-Encoding: chunked\r\nConnection: close\r\n\r\n${chunked(`"${'x'.repeat(2 << 20)}"`)}`,
  },
  {
    name: 'a length shorter than the body',
    expected: [400],
    raw: (port, cookie) =>
      `POST /call HTTP/1.1\r\n${HOST(port)}${ORIGIN(port)}${COOKIE(cookie)}${JSON_TYPE}Content-Length: 5\r\nConnection: close\r\n\r\n${BODY}`,
  },
  {
    name: 'a length and chunks at once',
    expected: [400],
    raw: (port, cookie) =>
      `POST /call HTTP/1.1\r\n${HOST(port)}${ORIGIN(port)}${COOKIE(cookie)}${JSON_TYPE}Content-Length: 5\r\nTransfer-Encoding: chunked\r\nConnection: close\r\n\r\n${chunked(BODY)}`,
  },
  {
    name: 'a header of 16 kB',
    expected: [431, 0],
    raw: (port, cookie) => get('/', `${HOST(port)}${COOKIE(cookie)}X: ${'x'.repeat(16_384)}\r\n`),
  },
  ...wrongPaths.map(
    (path): Probe => ({
      name: `path ${path}`,
      expected: [404, 400],
      raw: (port, cookie) => get(path, `${HOST(port)}${COOKIE(cookie)}`),
    }),
  ),
  {
    name: 'a web socket',
    expected: [0],
    raw: (port, cookie) =>
      `GET / HTTP/1.1\r\n${HOST(port)}${COOKIE(cookie)}Connection: Upgrade\r\nUpgrade: websocket\r\nSec-WebSocket-Key: x\r\nSec-WebSocket-Version: 13\r\n\r\n`,
  },
];

export interface Answered {
  readonly status: number;
  readonly head: string;
  readonly body: string;
}

/** Sends exactly these bytes; status 0 when the line was closed without an answer. */
export function send(port: number, raw: string): Promise<Answered> {
  return new Promise((resolve) => {
    let text = '';
    const socket = connect({ host: '127.0.0.1', port }, () => socket.write(raw));
    socket.on('data', (part) => {
      text += part.toString('latin1');
    });
    const done = () => {
      const [head = '', body = ''] = text.split('\r\n\r\n');
      resolve({ status: Number(/^HTTP\/1\.1 (\d{3})/.exec(head)?.[1] ?? 0), head, body });
    };
    socket.on('close', done);
    socket.on('error', () => socket.destroy());
    socket.setTimeout(8_000, () => socket.destroy());
  });
}
