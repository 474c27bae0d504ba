import { chmodSync, existsSync, renameSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import type { Refusal } from '../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../shared/kernel/result.ts';
import { makeFolder } from './create-workbook.ts';
import { flushFile, flushFolder, moveIntoPlace, PRIVATE_FILE, removeLeftover } from './durable-file.ts';
import { type InventedKind, MARKS, WORKBOOK_ENDING } from './file-marks.ts';
import { writeBuiltWorkbook } from './memory-workbook.ts';
import { type OpenSetting, openWorkbookFile } from './open-workbook.ts';
import { openingTrouble } from './opening-trouble.ts';
import { freeName } from './safety-copy.ts';
import type { Workbook } from './workbook.ts';

/** A workbook of invented data, a file of its own beside the program's data. */
export interface InventedFile {
  readonly kind: InventedKind;
  readonly programData: string;
  /** Of the program that asks for it. */
  readonly version: string;
  /** Tells the invented yard to an empty workbook. */
  readonly build: (workbook: Workbook) => void;
}

const NAMES: Readonly<Record<InventedKind, string>> = { demo: 'Demo yard', practice: 'Practice yard' };

const folderOf = ({ programData, kind }: Pick<InventedFile, 'programData' | 'kind'>): string => join(programData, kind);

/** Where the demo or the practice workbook of this computer lies. */
export const inventedPlace = (which: Pick<InventedFile, 'programData' | 'kind'>): string =>
  join(folderOf(which), `${which.kind}${WORKBOOK_ENDING}`);

/**
 * Opens the demo or the practice workbook, having it built where it is missing or unreadable. The demo is also built anew
 * for another version of the program; the practice workbook stays as it was left until it is set back.
 */
export function openInventedFile(wanted: InventedFile, setting: OpenSetting): Result<Workbook, Refusal> {
  const file = inventedPlace(wanted);
  const own = ownSetting(wanted, setting);
  if (existsSync(file)) {
    const known = openWorkbookFile(file, own);
    if (known.ok && isAsWanted(known.value, wanted)) return known;
    if (known.ok) known.value.close();
    else if (known.refusal.kind === 'workbook-open-elsewhere') return known;
    if (!known.ok || known.value.kind !== wanted.kind) setAside(file);
  }
  const built = buildInvented(wanted, setting);
  return built.ok ? openBuilt(wanted, setting) : built;
}

const unfinishedOf = (which: Pick<InventedFile, 'programData' | 'kind'>): string => `${inventedPlace(which)}.new`;

/** Builds the invented yard under another name, until it is whole. Hundreds of changes, so in memory. */
export function buildInvented(wanted: InventedFile, { migrations, now }: OpenSetting): Result<null, Refusal> {
  const { kind, version, build } = wanted;
  const unfinished = unfinishedOf(wanted);
  try {
    makeFolder(folderOf(wanted));
    removeLeftover(unfinished);
    writeBuiltWorkbook(unfinished, { migrations, now, name: NAMES[kind], kind }, (invented) => {
      build(invented);
      const marked = invented.change({ did: 'other' }, ({ settings }) => ok(settings.put(MARKS.builtBy, version)));
      if (!marked.ok) throw new Error(`The ${kind} could not be marked: ${marked.refusal.kind}.`);
    });
    chmodSync(unfinished, PRIVATE_FILE);
    flushFile(unfinished);
    return ok(null);
  } catch (error) {
    return refuse(openingTrouble(error, inventedPlace(wanted)));
  }
}

/** Puts what was built in the place of the one before, which nobody may hold open, and opens it. */
export function openBuilt(wanted: InventedFile, setting: OpenSetting): Result<Workbook, Refusal> {
  const file = inventedPlace(wanted);
  try {
    removeLeftover(file);
    moveIntoPlace(unfinishedOf(wanted), file);
  } catch (error) {
    return refuse(openingTrouble(error, file));
  }
  return openWorkbookFile(file, ownSetting(wanted, setting));
}

/** Copies made before a change of format lie beside it, away from those of real workbooks. */
const ownSetting = (wanted: InventedFile, setting: OpenSetting): OpenSetting => ({
  ...setting,
  safetyFolder: join(folderOf(wanted), 'safety-copies'),
});

const isAsWanted = (workbook: Workbook, { kind, version }: InventedFile): boolean =>
  workbook.kind === kind && (kind === 'practice' || workbook.tables.settings.get(MARKS.builtBy) === version);

/** Whatever lies under the name and is not known to be invented is kept under another one, with its log. */
function setAside(file: string): void {
  const folder = dirname(file);
  const kept = freeName(folder, `${basename(file, WORKBOOK_ENDING)} set aside`);
  for (const ending of ['', '-wal', '-journal']) {
    if (existsSync(file + ending)) renameSync(file + ending, kept + ending);
  }
  flushFolder(folder);
}
