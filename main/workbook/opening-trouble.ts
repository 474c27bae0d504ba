import { dirname } from 'node:path';
import type { Refusal } from '../../shared/contract/refusal.ts';
import { codeOf, notSavedReason } from './save-trouble.ts';

/** Another program may be looking at the same file for a few milliseconds; so many short waits before we say so. */
const BUSY_TRIES = 8;
const BUSY_PAUSE = { least: 10, most: 50 };
/** One "damaged" is no verdict: a read error looks the same. So many looks at least a second apart before it is one. */
const DAMAGE_TRIES = 3;
const DAMAGE_PAUSE = 1000;

/** Runs an opening again while its failure may pass by itself. Pauses are in milliseconds and block. */
export function withSecondThoughts<Value>(damagePause: number | undefined, attempt: () => Value): Value {
  let busy = 0;
  let damaged = 0;
  for (;;) {
    try {
      return attempt();
    } catch (error) {
      if (isBusy(error)) {
        busy += 1;
        if (busy >= BUSY_TRIES) throw error;
        pause(BUSY_PAUSE.least + Math.random() * (BUSY_PAUSE.most - BUSY_PAUSE.least));
      } else if (isDamage(error)) {
        damaged += 1;
        if (damaged >= DAMAGE_TRIES) throw error;
        pause(damagePause ?? DAMAGE_PAUSE);
      } else throw error;
    }
  }
}

/** Why a file could not be opened, as a refusal; throws on what is our own mistake. */
export function openingTrouble(error: unknown, file: string): Refusal {
  if (isBusy(error)) return { kind: 'workbook-open-elsewhere', field: 'file', file };
  if (isDamage(error)) return { kind: 'workbook-damaged', field: 'file', file };
  const code = codeOf(error);
  const reason = notSavedReason(error);
  if (code === 'SQLITE_CANTOPEN' || reason === 'read-only') {
    return { kind: 'place-not-writable', field: 'folder', folder: dirname(file) };
  }
  if (reason !== null) {
    return { kind: 'drive-refused', field: 'file', file, reason: reason === 'disk-full' ? reason : 'drive-error' };
  }
  throw error;
}

const isBusy = (error: unknown): boolean => /^SQLITE_(BUSY|LOCKED)/.test(codeOf(error) ?? '');

/** A broken byte of the header comes as a general error of which only the message tells. */
const isDamage = (error: unknown): boolean =>
  /^SQLITE_(CORRUPT|IOERR_CORRUPTFS|NOTADB)/.test(codeOf(error) ?? '') ||
  (codeOf(error) === 'SQLITE_ERROR' && /unsupported file format|malformed/.test(String(error)));

function pause(milliseconds: number): void {
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, milliseconds);
}
