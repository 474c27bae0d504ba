import { copyFileSync, existsSync, readdirSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { z } from 'zod';
import { CopyPurpose, type Hold, type SafetyCopy } from '../../shared/contract/copies.ts';
import type { WorkbookRef } from '../../shared/contract/workbook.ts';
import { type CopyNote, noteFileOf, readNote, sha256Of } from './copy-note.ts';
import { copiesToDrop } from './copy-rotation.ts';
import { flushFile, moveIntoPlace, removeLeftover, replaceFile } from './durable-file.ts';
import { WORKBOOK_ENDING } from './file-marks.ts';
import { notSavedReason } from './save-trouble.ts';

/** A copy and what is written down about it; the note is null where it was lost. */
export interface ShelvedCopy extends SafetyCopy {
  readonly note: CopyNote | null;
}

/** The copies on this computer and in the second place, and what the person decided about them. */
export interface CopyShelf {
  readonly folder: string;
  /** Copies of one workbook, newest first. */
  list(of: WorkbookRef): readonly ShelvedCopy[];
  secondPlace(): string | null;
  setSecondPlace(folder: string | null): void;
  holdOf(of: WorkbookRef): Hold | null;
  setHold(of: WorkbookRef, hold: Hold | null): void;
  /**
   * After a new copy: looks whether much was lost, brings the newest to the second place, and removes old ones. A drive
   * that is full or not there stops none of the rest.
   */
  tidy(of: WorkbookRef): void;
}

const Choices = z.object({ secondPlace: z.string().nullable(), holds: z.record(z.string(), z.string()) });
type Choices = z.infer<typeof Choices>;
const NO_CHOICES: Choices = { secondPlace: null, holds: {} };

/** A copy with this much fewer records than the one before makes us ask before old copies go. */
const LOSS_TO_ASK_ABOUT = 0.2;

export function copyShelf(programData: string, folder: string): CopyShelf {
  const choicesFile = join(programData, 'safety-choices.json');
  const choices = (): Choices => readChoices(choicesFile);
  const choose = (changes: Partial<Choices>) =>
    replaceFile(choicesFile, `${JSON.stringify({ ...choices(), ...changes }, null, 2)}\n`);
  const shelf: CopyShelf = {
    folder,
    list(of) {
      const { secondPlace } = choices();
      const second = secondPlace === null ? [] : copiesIn(secondPlace, 'second', of);
      return [...copiesIn(folder, 'here', of), ...second].sort(newestFirst);
    },
    secondPlace: () => choices().secondPlace,
    setSecondPlace: (secondPlace) => choose({ secondPlace }),
    holdOf: ({ file }) => holdIn(choices().holds[file]),
    setHold({ file }, hold) {
      const { [file]: _before, ...others } = choices().holds;
      choose({ holds: hold === null ? others : { ...others, [file]: hold } });
    },
    tidy(of) {
      const here = copiesIn(folder, 'here', of);
      if (shelf.holdOf(of) === null && hasLostMuch(here)) quietly(() => shelf.setHold(of, 'counts-fell'));
      const { secondPlace } = choices();
      const newest = here.find(({ checked }) => checked);
      if (secondPlace !== null && newest !== undefined) quietly(() => bringTo(secondPlace, newest));
      if (shelf.holdOf(of) !== null) return;
      const places = secondPlace === null ? [here] : [here, copiesIn(secondPlace, 'second', of)];
      for (const copies of places) {
        for (const { file } of copiesToDrop(copies))
          quietly(() => [removeLeftover(file), removeLeftover(noteFileOf(file))]);
      }
    },
  };
  return shelf;
}

const newestFirst = (one: SafetyCopy, other: SafetyCopy): number =>
  one.at === other.at ? (one.id < other.id ? 1 : -1) : one.at < other.at ? 1 : -1;

/** `Season 2026-06-01T183015 close.ripecell`, as makeSafetyCopy names them; perhaps with a number behind. */
const NAME = /^(.+) (\d{4}-\d\d-\d\d)T(\d\d)(\d\d)(\d\d) ([a-z-]+?)(?: \(\d+\))?\.ripecell$/;

function copiesIn(folder: string, place: SafetyCopy['place'], of: WorkbookRef): readonly ShelvedCopy[] {
  const names = namesIn(folder).filter((name) => name.endsWith(WORKBOOK_ENDING));
  return names
    .flatMap((name) => {
      const copy = shelved(join(folder, name), place);
      return copy !== null && belongsTo(copy, of) ? [copy] : [];
    })
    .sort(newestFirst);
}

function shelved(file: string, place: SafetyCopy['place']): ShelvedCopy | null {
  const bytes = statSync(file, { throwIfNoEntry: false })?.size;
  if (bytes === undefined) return null;
  const base = { id: `${place}:${basename(file)}`, file, place, bytes };
  const note = readNote(file);
  if (note !== null) {
    const { at, purpose, counts } = note;
    return { ...base, at, purpose, counts, checked: note.bytes === bytes, note };
  }
  const [, , day, hours, minutes, seconds, purpose] = NAME.exec(basename(file)) ?? [];
  const known = CopyPurpose.safeParse(purpose);
  if (!known.success) return null;
  const at = `${day}T${hours}:${minutes}:${seconds}.000Z`;
  return { ...base, at, purpose: known.data, counts: null, checked: false, note: null };
}

/** Of the workbook at that place; or of one by that name that is no longer where it was, hence moved. */
function belongsTo({ file, note }: ShelvedCopy, of: WorkbookRef): boolean {
  if (note === null) return NAME.exec(basename(file))?.[1] === basename(of.file, WORKBOOK_ENDING);
  return note.file === of.file || (note.name === of.name && !existsSync(note.file));
}

function hasLostMuch([newest, before]: readonly ShelvedCopy[]): boolean {
  const [now, then] = [recordsOf(newest), recordsOf(before)];
  return now !== null && then !== null && now < then * (1 - LOSS_TO_ASK_ABOUT);
}

function recordsOf(copy: ShelvedCopy | undefined): number | null {
  const counts = copy?.counts;
  if (!counts) return null;
  return [counts.hives, counts.batches, counts.looks, counts.queens].reduce<number>((sum, n) => sum + (n ?? 0), 0);
}

/** The finished copy, never the workbook itself: that one is open. Its sum is compared before it gets its name. */
function bringTo(folder: string, { file, note }: ShelvedCopy): void {
  if (!existsSync(folder)) return;
  const target = join(folder, basename(file));
  if (existsSync(target) || note === null) return;
  const part = `${target}.part`;
  try {
    copyFileSync(file, part);
    flushFile(part);
    if (sha256Of(part).sha256 !== note.sha256)
      throw Object.assign(new Error(`${part} was not written well.`), { code: 'EIO' });
    moveIntoPlace(part, target);
    replaceFile(noteFileOf(target), readFileSync(noteFileOf(file), 'utf8'));
  } finally {
    removeLeftover(part);
  }
}

export function isSameFolder(one: string, other: string): boolean {
  const real = (folder: string) => (existsSync(folder) ? realpathSync(folder) : resolve(folder));
  return real(one) === real(other);
}

function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch {
    // Not made yet, or a stick that is not plugged in.
    return [];
  }
}

function readChoices(file: string): Choices {
  try {
    return Choices.parse(JSON.parse(readFileSync(file, 'utf8')));
  } catch {
    return NO_CHOICES;
  }
}

const holdIn = (stored: string | undefined): Hold | null =>
  stored === 'restored' || stored === 'counts-fell' || stored === 'harmed' ? stored : null;

function quietly(work: () => unknown): void {
  try {
    work();
  } catch (error) {
    if (notSavedReason(error) === null) throw error;
  }
}
