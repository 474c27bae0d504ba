import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import type { Drafts } from '../../shared/contract/drafts.ts';
import { replaceFile } from './durable-file.ts';
import { notSavedReason } from './save-trouble.ts';

/** By workbook file, then by place on the page. */
const Stored = z.record(z.string(), z.record(z.string(), z.string()));
type Stored = z.infer<typeof Stored>;

/** More are never half typed at once; the oldest go first. */
const DRAFTS_MOST = 200;

export interface DraftStore {
  of(file: string): Drafts;
  /** Quiet where the drive refuses: a draft is a kindness, the page keeps the text as well. */
  keep(file: string, key: string, text: string | null): void;
  /** All of a workbook that begins anew. */
  forget(file: string): void;
}

/**
 * Half-typed rows and forms, in a small file beside the program's own data and not in the workbook: they are not yet
 * part of it, and must survive when just that file cannot be written.
 */
export function draftStore(programData: string): DraftStore {
  const place = join(programData, 'drafts.json');
  return {
    of: (file) => read(place)[file] ?? {},
    keep(file, key, text) {
      const stored = read(place);
      const { [key]: before, ...others } = stored[file] ?? {};
      if (before === (text ?? undefined)) return;
      const kept = text === null ? others : { ...others, [key]: text };
      const newest = Object.fromEntries(Object.entries(kept).slice(-DRAFTS_MOST));
      const { [file]: _emptied, ...elsewhere } = stored;
      write(place, Object.keys(newest).length === 0 ? elsewhere : { ...stored, [file]: newest });
    },
    forget(file) {
      const { [file]: drafts, ...elsewhere } = read(place);
      if (drafts !== undefined) write(place, elsewhere);
    },
  };
}

function read(place: string): Stored {
  try {
    return Stored.parse(JSON.parse(readFileSync(place, 'utf8')));
  } catch {
    return {};
  }
}

function write(place: string, stored: Stored): void {
  try {
    replaceFile(place, `${JSON.stringify(stored)}\n`);
  } catch (error) {
    if (notSavedReason(error) === null) throw error;
  }
}
