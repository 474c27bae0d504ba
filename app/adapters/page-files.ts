import { randomBytes } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { extname, join, relative, sep } from 'node:path';
import { OWN_SCRIPTS, STYLE_WORD } from '../../shared/contract/page-policy.ts';

export interface PageFile {
  readonly mediaType: string;
  readonly bytes: Buffer;
}

const MEDIA_TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.json': 'application/json',
};

/** The built page as a table from address path to file, made once. No path from outside is ever joined to a folder. */
export function readPageFiles(folder: string): ReadonlyMap<string, PageFile> {
  const files = new Map<string, PageFile>();
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile()) continue;
    const mediaType = MEDIA_TYPES[extname(entry.name)];
    if (!mediaType) continue;
    const file = join(entry.parentPath, entry.name);
    files.set(`/${relative(folder, file).split(sep).join('/')}`, { mediaType, bytes: readFileSync(file) });
  }
  const start = files.get('/index.html');
  if (start) files.set('/', start);
  return files;
}

/** @param styles what may hold styles, besides the page's own files. */
const policy = (styles: string) =>
  [
    "default-src 'none'",
    "script-src 'self'",
    `style-src 'self'${styles}`,
    "img-src 'self' data: blob:",
    "font-src 'self'",
    "connect-src 'self'",
    'frame-src blob:',
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
    "require-trusted-types-for 'script'",
    `trusted-types ${OWN_SCRIPTS}`,
  ].join('; ');

/** Sent with every answer of either shell. */
export const SECURITY_HEADERS: Readonly<Record<string, string>> = {
  'content-security-policy': policy(''),
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'cache-control': 'no-store',
};

/**
 * A file as it is sent. The page itself carries a word made for this one answer, by which the style library may write its
 * styles at run time; no other style in the page is followed.
 */
export function answerOf({ mediaType, bytes }: PageFile): {
  readonly headers: Readonly<Record<string, string>>;
  readonly bytes: Buffer;
} {
  const headers = { ...SECURITY_HEADERS, 'content-type': mediaType };
  if (!mediaType.startsWith('text/html')) return { headers, bytes };
  const word = randomBytes(16).toString('base64url');
  return {
    headers: { ...headers, 'content-security-policy': policy(` 'nonce-${word}'`) },
    bytes: Buffer.from(bytes.toString('utf8').replaceAll(STYLE_WORD, word)),
  };
}
