import { accessSync, constants, existsSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { CopyList, CopyPurpose, Harm, SafetyCopy } from '../../shared/contract/copies.ts';
import type { Refusal } from '../../shared/contract/refusal.ts';
import type { WorkbookRef } from '../../shared/contract/workbook.ts';
import { ok, type Result, refuse } from '../../shared/kernel/result.ts';
import { sha256Of } from './copy-note.ts';
import { type CopyShelf, copyShelf, isSameFolder, type ShelvedCopy } from './copy-shelf.ts';
import { lookingFolderOf } from './looking-copy.ts';
import { type OpenSetting, openLookingCopy, openWorkbookFile } from './open-workbook.ts';
import { openingTrouble } from './opening-trouble.ts';
import { putInPlace } from './restore-copy.ts';
import { isSound } from './safety-copy.ts';
import { notSavedReason } from './save-trouble.ts';
import { lookThoroughly, onceForEach } from './thorough-look.ts';
import type { CheckFile, Copies, Workbook } from './workbook.ts';

/** What the copies need of the keeper. */
export interface CopyPlaces {
  readonly programData: string;
  readonly setting: OpenSetting;
  /** The workbook that is open for writing, also while a copy is looked at. */
  readonly present: () => Workbook | null;
  /** The workbook of which copies are shown while none is open. */
  readonly absent: () => WorkbookRef | null;
  readonly show: (copy: Workbook | null) => void;
  /** Looks at the copy of the pages. */
  readonly checkFile: CheckFile;
  /** Closes what is open. */
  readonly closeAll: () => void;
  /** Opens the file that took the workbook's place. */
  readonly reopen: (file: string) => Result<Workbook, Refusal>;
}

/** With changes: so long after the last copy one is due; so long nobody may have typed; for so long typing puts it off. */
const DUE = { after: 30 * 60_000, quiet: 20_000, atMost: 45 * 60_000 } as const;

/** Safety copies as the person sees them. */
export function copiesOf(places: CopyPlaces): Copies {
  return new OneSetOfCopies(places);
}

class OneSetOfCopies implements Copies {
  #lookingAt: SafetyCopy | null = null;
  readonly #places: CopyPlaces;
  readonly #shelf: CopyShelf;
  readonly #schedule: ReturnType<typeof copySchedule>;
  readonly #check: ReturnType<typeof onceForEach>;

  constructor(places: CopyPlaces) {
    this.#places = places;
    this.#shelf = copyShelf(places.programData, places.setting.safetyFolder);
    this.#schedule = copySchedule(places.setting.now);
    const folder = lookingFolderOf(places.setting.safetyFolder);
    this.#check = onceForEach((workbook, note) => lookThoroughly(workbook, note, folder, places.checkFile));
  }

  get lookingAt(): SafetyCopy | null {
    return this.#lookingAt;
  }

  list(): CopyList {
    return listOf(this.#shelf, this.#of());
  }

  make(purpose: CopyPurpose): Result<SafetyCopy, Refusal> {
    const workbook = this.#places.present();
    if (workbook === null || workbook.kind !== 'real') return refuse({ kind: 'no-workbook-to-copy' });
    const made = workbook.keepCopy(purpose);
    if (!made.ok) return made;
    this.#schedule.tried(workbook);
    const fresh = this.#shelf.list(workbook).find(({ file }) => file === made.value);
    if (fresh === undefined) return refuse({ kind: 'copy-not-made', reason: 'drive-error' });
    // Going back must not push out the very copy one goes back to.
    if (purpose !== 'before-restore') this.#shelf.tidy(workbook);
    return ok(withoutNote(fresh));
  }

  makeIfDue(): void {
    const workbook = this.#places.present();
    if (workbook === null || !isWritten(workbook) || !this.#schedule.isDue(workbook)) return;
    this.#schedule.tried(workbook);
    if (changedSinceCopy(workbook, this.#shelf)) this.make('timer');
  }

  makeAtClose(): void {
    const workbook = this.#places.present();
    if (workbook !== null && isWritten(workbook) && changedSinceCopy(workbook, this.#shelf)) this.make('close');
  }

  get harm(): Harm | null {
    return this.#check.found(this.#places.present());
  }

  async checkIfDue(): Promise<void> {
    const workbook = this.#places.present();
    if (workbook === null || !isWritten(workbook)) return;
    const newest = this.#shelf.list(workbook).find(({ checked, place }) => checked && place === 'here');
    const known = this.harm;
    await this.#check.run(workbook, newest?.note ?? null);
    // Once: what the person has released stays released.
    if (known === null && this.harm !== null) this.#shelf.setHold(workbook, 'harmed');
  }

  look(id: string): Result<Workbook, Refusal> {
    const copy = this.#find(id);
    if (copy === null) return refuse({ kind: 'copy-not-found', field: 'copy' });
    const opened = looked(copy, this.#places.setting);
    if (!opened.ok) return opened;
    this.#places.show(opened.value);
    this.#lookingAt = withoutNote(copy);
    return opened;
  }

  leave(): void {
    this.#lookingAt = null;
    this.#places.show(null);
  }

  restore(id: string, folder: string | null): Result<{ readonly keptAs: string | null }, Refusal> {
    const [copy, ref] = [this.#find(id), this.#of()];
    if (copy === null || ref === null) return refuse({ kind: 'copy-not-found', field: 'copy' });
    const target = folder === null ? ref.file : join(folder, basename(ref.file));
    const restored = goBackTo(copy, target, this.#places, () => this.make('before-restore'));
    if (restored.ok) this.#shelf.setHold({ name: ref.name, file: target }, 'restored');
    return restored;
  }

  setSecondPlace(folder: string | null): Result<null, Refusal> {
    const refusal = folder === null ? null : whyNotSecondPlace(folder, this.#shelf.folder, this.#of());
    if (refusal !== null) return refuse(refusal);
    this.#shelf.setSecondPlace(folder);
    const workbook = this.#places.present();
    if (workbook !== null) this.#shelf.tidy(workbook);
    return ok(null);
  }

  release(): void {
    const of = this.#of();
    if (of !== null) this.#shelf.setHold(of, null);
  }

  #of(): WorkbookRef | null {
    return refOf(this.#places.present()) ?? this.#places.absent();
  }

  #find(id: string): ShelvedCopy | null {
    const of = this.#of();
    return of === null ? null : (this.#shelf.list(of).find((copy) => copy.id === id) ?? null);
  }
}

const refOf = (workbook: Workbook | null): WorkbookRef | null =>
  workbook === null || workbook.kind !== 'real' ? null : { name: workbook.name, file: workbook.file };

const isWritten = (workbook: Workbook): boolean => workbook.kind === 'real' && !workbook.readOnly;

/** The newest copy here holds an earlier or later state than the workbook, or there is none. */
function changedSinceCopy(workbook: Workbook, shelf: CopyShelf): boolean {
  if (workbook.savedAt === null) return false;
  const newest = shelf.list(workbook).find(({ checked, place }) => checked && place === 'here')?.note;
  return newest?.changeNumber !== workbook.changeNumber || newest.file !== workbook.file;
}

function listOf(shelf: CopyShelf, of: WorkbookRef | null): CopyList {
  const secondPlace = shelf.secondPlace();
  const copies = of === null ? [] : shelf.list(of);
  return {
    of,
    copies: copies.map(withoutNote),
    folder: shelf.folder,
    secondPlace:
      secondPlace === null
        ? null
        : {
            folder: secondPlace,
            reachable: existsSync(secondPlace),
            newestAt: copies.find(({ place }) => place === 'second')?.at ?? null,
          },
    hold: of === null ? null : shelf.holdOf(of),
  };
}

const withoutNote = ({ note: _note, ...copy }: ShelvedCopy): SafetyCopy => copy;

/** When the next copy in the course of work is due. Instants only measure how long ago something was. */
function copySchedule(now: () => string) {
  const instant = () => Date.parse(now());
  let from = instant();
  let doneFor: string | null = null;
  let changesSeenAt: number | null = null;
  return {
    /** Also after a copy that could not be made: it is not tried again every few seconds. */
    tried({ savedAt }: Workbook) {
      from = instant();
      doneFor = savedAt;
      changesSeenAt = null;
    },
    isDue({ savedAt }: Workbook): boolean {
      if (savedAt === null || savedAt === doneFor) return false;
      // A clock that was set back must not keep copies from being made.
      if (instant() < from) from = instant();
      changesSeenAt = Math.min(changesSeenAt ?? instant(), instant());
      const isQuiet = instant() - Date.parse(savedAt) >= DUE.quiet;
      return instant() - from >= DUE.after && (isQuiet || instant() - changesSeenAt >= DUE.atMost);
    },
  };
}

function looked(copy: ShelvedCopy, setting: OpenSetting): Result<Workbook, Refusal> {
  const unsound = refuse({ kind: 'copy-not-sound', field: 'copy', file: copy.file } as const);
  try {
    if (!isAsItWas(copy)) return unsound;
    const opened = openLookingCopy(copy.file, setting, 'copy');
    return opened.ok || opened.refusal.kind === 'workbook-newer' ? opened : unsound;
  } catch (error) {
    if (/^SQLITE_(CORRUPT|NOTADB)/.test(String((error as { code?: unknown }).code))) return unsound;
    return refuse(openingTrouble(error, copy.file));
  }
}

/** The bytes as they were when it was checked; a copy without a note is checked page by page. */
function isAsItWas({ file, note }: ShelvedCopy): boolean {
  if (note !== null) return sha256Of(file).sha256 === note.sha256;
  return isSound(file, null);
}

/** Look at the copy, keep the present workbook as a copy too, close it, swap the files, open again. */
function goBackTo(
  copy: ShelvedCopy,
  target: string,
  places: CopyPlaces,
  keepPresent: () => Result<SafetyCopy, Refusal>,
): Result<{ readonly keptAs: string | null }, Refusal> {
  const seen = looked(copy, places.setting);
  if (!seen.ok) return seen;
  seen.value.close();
  const { programData, setting, present } = places;
  const workbook = present();
  if (workbook === null || workbook.file !== target) {
    const free = isFree(target, setting);
    if (!free.ok) return free;
  } else {
    const kept = workbook.readOnly ? ok(null) : keepPresent();
    if (!kept.ok) return kept;
  }
  try {
    places.closeAll();
    const keptAs = putInPlace(copy.file, target, programData, setting.now());
    const opened = places.reopen(target);
    return opened.ok ? ok({ keptAs }) : opened;
  } catch (error) {
    const reason = notSavedReason(error);
    if (reason === null) throw error;
    places.reopen(target);
    return refuse({ kind: 'copy-not-made', reason: reason === 'file-replaced' ? 'drive-error' : reason });
  }
}

/** No other program has the file that would be renamed. A damaged one, or none, may be. */
function isFree(file: string, setting: OpenSetting): Result<null, Refusal> {
  const folder = join(file, '..');
  if (!existsSync(folder)) return refuse({ kind: 'folder-not-found', field: 'folder', folder });
  if (!existsSync(file)) return ok(null);
  const opened = openWorkbookFile(file, setting);
  if (opened.ok) opened.value.close();
  return !opened.ok && opened.refusal.kind === 'workbook-open-elsewhere' ? opened : ok(null);
}

function whyNotSecondPlace(folder: string, safetyFolder: string, of: WorkbookRef | null): Refusal | null {
  if (!(statSync(folder, { throwIfNoEntry: false })?.isDirectory() ?? false)) {
    return { kind: 'folder-not-found', field: 'folder', folder };
  }
  if (isSameFolder(folder, safetyFolder) || (of !== null && isSameFolder(folder, join(of.file, '..')))) {
    return { kind: 'second-place-same', field: 'folder', folder };
  }
  try {
    accessSync(folder, constants.W_OK);
    return null;
  } catch {
    return { kind: 'place-not-writable', field: 'folder', folder };
  }
}
