import { protocol } from 'electron';
import { answerOf, type PageFile, SECURITY_HEADERS } from '../adapters/page-files.ts';

export const PAGE_ORIGIN = 'app://ripecell';

/** Must run before the app is ready: makes app:// a standard, secure scheme with none of the loosening privileges. */
export function registerPageScheme(): void {
  protocol.registerSchemesAsPrivileged([
    { scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
}

/** Serves the built page from its table of files; anything else is refused. */
export function servePage(files: ReadonlyMap<string, PageFile>): void {
  protocol.handle('app', async (request) => answerPage(files, request));
}

export function answerPage(files: ReadonlyMap<string, PageFile>, request: Request): Response {
  const url = new URL(request.url);
  if (`${url.protocol}//${url.host}` !== PAGE_ORIGIN) return plain(403);
  if (request.method !== 'GET') return plain(405);
  const file = files.get(url.pathname);
  if (!file) return plain(404);
  const { headers, bytes } = answerOf(file);
  return new Response(new Uint8Array(bytes), { status: 200, headers });
}

const plain = (status: number) => new Response('', { status, headers: SECURITY_HEADERS });
