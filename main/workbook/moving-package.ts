import { closeSync, existsSync, mkdtempSync, openSync, readSync, rmSync, writeSync } from 'node:fs';
import { basename, join } from 'node:path';
import { Zip, ZipDeflate } from 'fflate';
import { z } from 'zod';
import { flushFile, moveIntoPlace, PRIVATE_FILE, removeLeftover } from './durable-file.ts';
import { WORKBOOK_ENDING } from './file-marks.ts';

/** What lies in a package: the workbook, and its safety copies with their notes, each in a folder of its own. */
export const PACKED = { workbook: 'workbook/', copies: 'safety-copies/' } as const;
export const PACKAGE_ENDING = '.zip';

/** Over the bytes of the workbook, in a small file beside it: a zip’s own sums are not looked at by every program. */
export const PackedSum = z.object({ sha256: z.string() });
export type PackedSum = z.infer<typeof PackedSum>;

/** A file on its way into the package. */
export interface PackedFile {
  readonly name: string;
  readonly file: string;
}

/** Bytes read at once, so that a large workbook needs little memory. */
const PIECE = 1 << 20;

/** Writes files into one zip that appears under its name whole or not at all. Throws what the drive throws. */
export function writePackage(target: string, files: readonly PackedFile[]): void {
  const part = `${target}.part`;
  try {
    const handle = openSync(part, 'w', PRIVATE_FILE);
    try {
      const zip = new Zip((error, piece) => {
        if (error) throw error;
        writeSync(handle, piece);
      });
      for (const file of files) addFile(zip, file);
      zip.end();
    } finally {
      closeSync(handle);
    }
    flushFile(part);
    moveIntoPlace(part, target);
  } finally {
    removeLeftover(part);
  }
}

function addFile(zip: Zip, { name, file }: PackedFile): void {
  const entry = new ZipDeflate(name, { level: 6 });
  zip.add(entry);
  const handle = openSync(file, 'r');
  try {
    for (;;) {
      const piece = new Uint8Array(PIECE);
      const read = readSync(handle, piece, 0, PIECE, null);
      entry.push(piece.subarray(0, read), read < PIECE);
      if (read < PIECE) return;
    }
  } finally {
    closeSync(handle);
  }
}

/** A name for the package that no file in the folder has. */
export function freePackageName(folder: string, name: string): string {
  for (let attempt = 1; ; attempt += 1) {
    const file = join(folder, `${name}${attempt === 1 ? '' : ` (${attempt})`}${PACKAGE_ENDING}`);
    if (!existsSync(file)) return file;
  }
}

/** Gives `work` an empty folder of its own, which is gone afterwards. */
export function inPassingFolder<Value>(programData: string, work: (folder: string) => Value): Value {
  const folder = mkdtempSync(join(programData, 'moving-'));
  try {
    return work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export const nameInPackage = (file: string): string => basename(file, WORKBOOK_ENDING);
