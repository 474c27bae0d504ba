import type { Refusal } from '../../shared/contract/refusal.ts';

export type NotSaved = Extract<Refusal, { readonly kind: 'not-saved' }>;

/** The code of an SQLite or file system error, or null for anything else that was thrown. */
export function codeOf(error: unknown): string | null {
  if (!(error instanceof Error) || !('code' in error)) return null;
  return typeof error.code === 'string' ? error.code : null;
}

/** A code of the operating system (EIO, ENOTDIR), as against SQLITE_... and ERR_... */
const SYSTEM_CODE = /^E[A-Z0-9]+$/;

/** What the world, not the program, did wrong: null when the error is our own mistake and must be thrown on. */
export function notSavedReason(error: unknown): NotSaved['reason'] | null {
  const code = codeOf(error);
  if (code === null) return null;
  if (code === 'SQLITE_FULL' || code === 'ENOSPC' || code === 'EDQUOT') return 'disk-full';
  if (code.startsWith('SQLITE_READONLY') || code === 'EROFS' || code === 'EACCES' || code === 'EPERM')
    return 'read-only';
  // A failed read can look like damage (SQLITE_CORRUPT on a good file), so one such answer is no verdict on the file.
  if (
    code.startsWith('SQLITE_IOERR') ||
    code.startsWith('SQLITE_CORRUPT') ||
    code === 'SQLITE_CANTOPEN' ||
    SYSTEM_CODE.test(code)
  ) {
    return 'drive-error';
  }
  return null;
}
