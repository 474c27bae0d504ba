import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import type { WorkbookRef } from '../../shared/contract/workbook.ts';
import { replaceFile } from './durable-file.ts';
import { notSavedReason } from './save-trouble.ts';

/** How many workbooks are offered again on the first page. */
const RECENT_MOST = 8;

const Ref = z.object({ name: z.string(), file: z.string() });
const Known = z.object({ last: Ref.nullable(), recent: z.array(Ref) });

/** What this computer remembers about workbooks, outside of any of them. */
export interface KnownWorkbooks {
  /** The workbook to open at the next start; null when it was closed on purpose, or there is none yet. */
  readonly last: WorkbookRef | null;
  /** Newest first, `last` among them. */
  readonly recent: readonly WorkbookRef[];
}

const NOTHING_KNOWN: KnownWorkbooks = { last: null, recent: [] };

export interface WorkbookMemory {
  read(): KnownWorkbooks;
  remember(workbook: WorkbookRef): void;
  forgetLast(): void;
}

/** The memory as one small file in the program's own folder. An unreadable file counts as an empty memory. */
export function workbookMemory(programData: string): WorkbookMemory {
  const file = join(programData, 'known-workbooks.json');
  const read = (): KnownWorkbooks => parseKnown(textOf(file));
  const write = (known: KnownWorkbooks) => writeQuietly(file, `${JSON.stringify(known, null, 2)}\n`);
  return {
    read,
    remember: ({ name, file: place }) => {
      const others = read().recent.filter((known) => known.file !== place);
      write({ last: { name, file: place }, recent: [{ name, file: place }, ...others].slice(0, RECENT_MOST) });
    },
    forgetLast: () => write({ ...read(), last: null }),
  };
}

function parseKnown(text: string | null): KnownWorkbooks {
  if (text === null) return NOTHING_KNOWN;
  try {
    return Known.parse(JSON.parse(text));
  } catch {
    return NOTHING_KNOWN;
  }
}

/** A full or read-only drive must not keep anyone from working: the memory then stays as it was. */
function writeQuietly(file: string, text: string): void {
  try {
    replaceFile(file, text);
  } catch (error) {
    if (notSavedReason(error) === null) throw error;
  }
}

function textOf(file: string): string | null {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return null;
  }
}
