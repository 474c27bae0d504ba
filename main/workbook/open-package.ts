import {
  closeSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  openSync,
  readFileSync,
  readSync,
  statSync,
  writeSync,
} from 'node:fs';
import { basename, join } from 'node:path';
import { Unzip, UnzipInflate } from 'fflate';
import { noteFileOf, readNote, sha256Of, writeNote } from './copy-note.ts';
import { flushFile, moveIntoPlace, PRIVATE_FILE, PRIVATE_FOLDER, removeLeftover } from './durable-file.ts';
import { WORKBOOK_ENDING } from './file-marks.ts';
import { fileNameOf } from './file-name.ts';
import { PACKED, PackedSum } from './moving-package.ts';
import { freeName, isSound } from './safety-copy.ts';

/** Thrown in this file only: the package is not one of ours, or was harmed on the way. */
export class BrokenPackage extends Error {}

const STEP = 1 << 14;
/** Unpacked, all together: far more than the largest workbook with its copies, below what fills a drive. */
const MOST_BYTES = 4_000_000_000;
const MOST_FILES = 500;

/** Whether a file begins as a zip does. Never asked of the workbook that is open: reading it would drop its lock. */
export function isPackage(file: string): boolean {
  if (!(statSync(file, { throwIfNoEntry: false })?.isFile() ?? false)) return false;
  const first = firstBytes(file, 4);
  return first[0] === 0x50 && first[1] === 0x4b && first[2] === 3 && first[3] === 4;
}

/** Nothing of a file that may not be read; opening it will say so. */
function firstBytes(file: string, count: number): Uint8Array {
  const bytes = new Uint8Array(count);
  try {
    const handle = openSync(file, 'r');
    try {
      readSync(handle, bytes, 0, count, 0);
    } finally {
      closeSync(handle);
    }
  } catch {
    return bytes;
  }
  return bytes;
}

interface Unpacked {
  readonly workbook: string;
  readonly copies: readonly string[];
}

/**
 * Unpacks into an empty folder, and looks whether the workbook is the one that was packed, byte for byte. Names in the package choose
 * nothing: a file that has any other name than ours makes the whole package count as broken.
 */
export function unpack(file: string, folder: string): Unpacked {
  const workbooks: string[] = [];
  const copies: string[] = [];
  extract(file, (name) => {
    const place = placeOf(name);
    if (place === null) throw new BrokenPackage(name);
    const target = join(folder, place.folder, place.name);
    mkdirSync(join(folder, place.folder), { recursive: true, mode: PRIVATE_FOLDER });
    if (existsSync(target)) throw new BrokenPackage(name);
    if (target.endsWith(WORKBOOK_ENDING)) (place.folder === 'workbook' ? workbooks : copies).push(target);
    return target;
  });
  const [workbook] = workbooks;
  if (workbook === undefined || workbooks.length > 1 || !isWhole(workbook)) throw new BrokenPackage(file);
  return { workbook, copies };
}

/** Brings what was unpacked to where it belongs, under free names; answers where the workbook now lies. */
export function putUnpacked({ workbook, copies }: Unpacked, documents: string, safetyFolder: string): string {
  mkdirSync(documents, { recursive: true });
  const target = freeName(documents, basename(workbook, WORKBOOK_ENDING));
  bring(workbook, target);
  mkdirSync(safetyFolder, { recursive: true, mode: PRIVATE_FOLDER });
  for (const copy of copies) {
    const place = join(safetyFolder, basename(copy));
    const note = readNote(copy);
    // A copy without its note, one harmed on the way, or one that is here already, is not worth failing for.
    if (note === null || existsSync(place) || sha256Of(copy).sha256 !== note.sha256) continue;
    bring(copy, place);
    writeNote(place, { ...note, file: target });
  }
  return target;
}

function bring(from: string, to: string): void {
  const part = `${to}.part`;
  try {
    copyFileSync(from, part);
    flushFile(part);
    moveIntoPlace(part, to);
  } finally {
    removeLeftover(part);
  }
}

function isWhole(workbook: string): boolean {
  try {
    const { sha256 } = PackedSum.parse(JSON.parse(readFileSync(noteFileOf(workbook), 'utf8')));
    return sha256Of(workbook).sha256 === sha256 && isSound(workbook, null);
  } catch {
    return false;
  }
}

/** workbook/Queens 2026.ripecell, safety-copies/… .ripecell, and beside each its … .ripecell.json */
function placeOf(name: string): { readonly folder: 'workbook' | 'safety-copies'; readonly name: string } | null {
  const folder = name.startsWith(PACKED.workbook)
    ? 'workbook'
    : name.startsWith(PACKED.copies)
      ? 'safety-copies'
      : null;
  if (folder === null) return null;
  const inside = name.slice(folder.length + 1);
  const isNote = inside === noteFileOf(inside.slice(0, -'.json'.length));
  const workbookName = isNote ? inside.slice(0, -'.json'.length) : inside;
  const isOurs = fileNameOf(basename(workbookName, WORKBOOK_ENDING)) === workbookName;
  return isOurs ? { folder, name: inside } : null;
}

/** Piece by piece onto the drive; counted, so that a package cannot fill it. */
function extract(file: string, targetOf: (name: string) => string): void {
  const open = new Set<number>();
  let files = 0;
  let bytes = 0;
  const unzip = new Unzip((entry) => {
    files += 1;
    if (files > MOST_FILES) throw new BrokenPackage(file);
    const handle = openSync(targetOf(entry.name), 'wx', PRIVATE_FILE);
    open.add(handle);
    entry.ondata = (error, piece, isLast) => {
      if (error) throw error;
      bytes += piece.length;
      if (bytes > MOST_BYTES) throw new BrokenPackage(file);
      if (piece.length > 0) writeSync(handle, piece);
      if (isLast && open.delete(handle)) closeSync(handle);
    };
    entry.start();
  });
  unzip.register(UnzipInflate);
  try {
    feed(file, unzip);
    if (open.size > 0) throw new BrokenPackage(file);
  } catch (error) {
    // Trouble of the drive keeps its code; whatever the library says of the content means a broken package.
    throw error instanceof Error && 'code' in error && typeof error.code === 'string' ? error : new BrokenPackage(file);
  } finally {
    for (const handle of open) closeSync(handle);
  }
}

function feed(file: string, unzip: Unzip): void {
  const handle = openSync(file, 'r');
  try {
    for (;;) {
      const piece = new Uint8Array(STEP);
      const read = readSync(handle, piece, 0, STEP, null);
      unzip.push(piece.subarray(0, read), read < STEP);
      if (read < STEP) return;
    }
  } finally {
    closeSync(handle);
  }
}
