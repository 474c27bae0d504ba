import { existsSync, realpathSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { Refusal } from '../../shared/contract/refusal.ts';
import type { Packed, WorkbookRef, WorkbookState } from '../../shared/contract/workbook.ts';
import { ok, type Result, refuse } from '../../shared/kernel/result.ts';
import { copiesOf } from './copies.ts';
import { createWorkbookFile, makeFolder } from './create-workbook.ts';
import { type DraftStore, draftStore } from './drafts.ts';
import { type InventedKind, WORKBOOK_ENDING } from './file-marks.ts';
import { fileNameOf } from './file-name.ts';
import { buildInvented, type InventedFile, inventedPlace, openBuilt, openInventedFile } from './invented-file.ts';
import { type WorkbookMemory, workbookMemory } from './known-workbooks.ts';
import { removeLookingCopies } from './looking-copy.ts';
import type { Migration } from './migrations.ts';
import { packForMoving, unpackMoved } from './moving.ts';
import { isPackage } from './open-package.ts';
import { lookAtWorkbookFile, type OpenSetting, openWorkbookFile } from './open-workbook.ts';
import { finishRestore } from './restore-copy.ts';
import { freeName, removeUnfinishedCopies } from './safety-copy.ts';
import { notSavedReason } from './save-trouble.ts';
import { checkHere } from './thorough-look.ts';
import type { CheckFile, Copies, Keeper, Workbook } from './workbook.ts';

export interface KeeperSetting {
  /** Where workbooks are put unless the person says otherwise. */
  readonly documents: string;
  /** The program's own folder: memory, safety copies, demo, practice workbook. */
  readonly programData: string;
  readonly migrations: readonly Migration[];
  readonly now: () => string;
  /** Looks at a copy of the open workbook's pages; in this thread when missing. */
  readonly checkFile?: CheckFile;
  /** Told of an error of our own at the start, which must not keep the window from opening. */
  readonly report: (error: unknown) => void;
}

/** Opens the workbook in use last, if it is where it was; a missing one is reported and never replaced by a blank. */
export function startKeeper({
  documents,
  programData,
  migrations,
  now,
  checkFile = checkHere,
  report,
}: KeeperSetting): Keeper {
  const setting: OpenSetting = { migrations, safetyFolder: join(programData, 'safety-copies'), now };
  const keeper = new OneKeeper(documents, programData, setting, checkFile);
  try {
    finishRestore(programData);
    removeUnfinishedCopies(setting.safetyFolder);
    removeLookingCopies(setting.safetyFolder);
    keeper.openLast();
  } catch (error) {
    report(error);
  }
  return keeper;
}

class OneKeeper implements Keeper {
  readonly copies: Copies;
  readonly drafts: DraftStore;
  /** The workbook itself; `#shown` is a safety copy that is looked at in front of it. */
  #present: Workbook | null = null;
  #shown: Workbook | null = null;
  #notOpened: WorkbookState['notOpened'] = null;
  readonly #memory: WorkbookMemory;
  readonly #documents: string;
  readonly #programData: string;
  readonly #setting: OpenSetting;

  constructor(documents: string, programData: string, setting: OpenSetting, checkFile: CheckFile) {
    this.#documents = documents;
    this.#programData = programData;
    this.#setting = setting;
    this.drafts = draftStore(programData);
    this.#memory = workbookMemory(programData);
    this.copies = copiesOf({
      programData,
      setting,
      checkFile,
      present: () => this.#present,
      absent: () => this.#notOpened ?? this.#missing() ?? this.#memory.read().recent[0] ?? null,
      show: (copy) => {
        this.#shown?.close();
        this.#shown = copy;
      },
      closeAll: () => this.stop(),
      reopen: (file) => this.open(file),
    });
  }

  get current(): Workbook | null {
    return this.#shown ?? this.#present;
  }

  known(): ReturnType<Keeper['known']> {
    return {
      missing: this.#missing(),
      notOpened: this.#notOpened,
      recent: this.#memory.read().recent.map(({ name, file }) => ({ name, file, found: existsSync(file) })),
      usualFolder: this.#documents,
    };
  }

  openLast(): void {
    const { last } = this.#memory.read();
    if (last !== null && existsSync(last.file)) this.open(last.file);
  }

  begin(name: string, folder: string | null): Result<Workbook, Refusal> {
    const file = join(folder ?? this.#documents, fileNameOf(name));
    if (folder === null) makeFolderIfPossible(this.#documents);
    return this.#changeTo(createWorkbookFile({ file, name, kind: 'real' }, this.#setting));
  }

  open(file: string): Result<Workbook, Refusal> {
    if (this.#present !== null && !this.#looksOnly && isSameFile(this.#present.file, file)) {
      this.copies.leave();
      return ok(this.#present);
    }
    if (isPackage(file)) return this.#openMoved(file);
    const opened = this.#changeTo(openWorkbookFile(file, this.#setting));
    if (!opened.ok && this.current === null && existsSync(file)) {
      this.#notOpened = { name: this.#nameOf(file), file, refusal: opened.refusal };
    }
    return opened;
  }

  lookAt(file: string): Result<Workbook, Refusal> {
    if (this.#present !== null && !this.#looksOnly && isSameFile(this.#present.file, file)) return this.open(file);
    return this.#changeTo(lookAtWorkbookFile(file, this.#setting));
  }

  /** What is shown is another program's workbook, as it was a moment ago. */
  get #looksOnly(): boolean {
    return this.#present?.readOnlyBecause === 'open-elsewhere';
  }

  pack(folder: string | null): Result<Packed, Refusal> {
    const { current } = this;
    if (current === null || current.kind !== 'real') return refuse({ kind: 'no-workbook-to-copy' });
    if (folder === null) makeFolderIfPossible(this.#documents);
    const place = { folder: folder ?? this.#documents, programData: this.#programData, now: this.#setting.now() };
    return packForMoving(current, this.copies, place);
  }

  #openMoved(file: string): Result<Workbook, Refusal> {
    const { safetyFolder } = this.#setting;
    const places = { documents: this.#documents, safetyFolder, programData: this.#programData };
    const unpacked = unpackMoved(file, places);
    return unpacked.ok ? this.open(unpacked.value) : unpacked;
  }

  saveElsewhere(folder: string): Result<Workbook, Refusal> {
    const { current } = this;
    if (current === null || current.kind !== 'real') return refuse({ kind: 'no-workbook-to-copy' });
    if (!isFolder(folder)) return refuse({ kind: 'folder-not-found', field: 'folder', folder });
    // A safety copy carries its date in its file name; the workbook in it has a name of its own.
    const name = this.copies.lookingAt === null ? basename(current.file) : fileNameOf(current.name);
    const file = freeName(folder, basename(name, WORKBOOK_ENDING));
    const saved = current.saveAs(file);
    if (saved.ok) return this.#changeTo(openWorkbookFile(file, this.#setting));
    const isReadOnly = saved.refusal.kind === 'copy-not-made' && saved.refusal.reason === 'read-only';
    return isReadOnly ? refuse({ kind: 'place-not-writable', field: 'folder', folder }) : saved;
  }

  openDemo(version: string, build: (demo: Workbook) => void): Result<Workbook, Refusal> {
    if (this.current?.kind === 'demo') return ok(this.current);
    return this.#changeTo(openInventedFile(this.#invented('demo', version, build), this.#setting));
  }

  openPractice(version: string, build: (practice: Workbook) => void): Result<Workbook, Refusal> {
    const wanted = this.#invented('practice', version, build);
    if (this.#isOpen(wanted)) return ok(this.#present as Workbook);
    return this.#changeTo(openInventedFile(wanted, this.#setting));
  }

  resetPractice(version: string, build: (practice: Workbook) => void): Result<Workbook, Refusal> {
    const wanted = this.#invented('practice', version, build);
    if (!this.#isOpen(wanted)) return refuse({ kind: 'not-practice' });
    // Another program may be writing in it.
    if (this.#present?.readOnly) return refuse({ kind: 'not-saved', reason: 'read-only' });
    const built = buildInvented(wanted, this.#setting);
    if (!built.ok) return built;
    const file = inventedPlace(wanted);
    this.stop();
    this.drafts.forget(file);
    return this.#changeTo(openBuilt(wanted, this.#setting));
  }

  #invented(kind: InventedKind, version: string, build: InventedFile['build']): InventedFile {
    return { kind, programData: this.#programData, version, build };
  }

  /** By what the open file says it is, and by where it lies: a copy of it elsewhere is somebody's own file. */
  #isOpen(wanted: InventedFile): boolean {
    const { current } = this;
    return current?.kind === wanted.kind && isSameFile(current.file, inventedPlace(wanted));
  }

  close(): void {
    if (this.#shown !== null) this.copies.leave();
    else {
      if (this.#present?.kind === 'real') this.#memory.forgetLast();
      this.stop();
    }
  }

  stop(): void {
    try {
      this.copies.makeAtClose();
    } finally {
      this.copies.leave();
      this.#present?.close();
      this.#present = null;
    }
  }

  /** A workbook that opened takes the place of the one before; otherwise all stays as it was. */
  #changeTo(opened: Result<Workbook, Refusal>): Result<Workbook, Refusal> {
    if (!opened.ok) return opened;
    this.stop();
    this.#present = opened.value;
    this.#notOpened = null;
    const { kind, name, file } = opened.value;
    if (kind === 'real') this.#memory.remember({ name, file });
    return opened;
  }

  #missing(): WorkbookRef | null {
    const { last } = this.#memory.read();
    return last !== null && !existsSync(last.file) ? last : null;
  }

  #nameOf(file: string): string {
    const known = this.#memory.read().recent.find((one) => one.file === file);
    return known?.name ?? basename(file, WORKBOOK_ENDING);
  }
}

/** The folder we offer ourselves may be missing on a new account; if it cannot be made, beginning says so. */
function makeFolderIfPossible(folder: string): void {
  try {
    makeFolder(folder);
  } catch (error) {
    if (notSavedReason(error) === null) throw error;
  }
}

const isFolder = (folder: string): boolean => statSync(folder, { throwIfNoEntry: false })?.isDirectory() ?? false;

/** By the names of the files, without opening either. */
function isSameFile(one: string, other: string): boolean {
  if (!existsSync(one) || !existsSync(other)) return false;
  return realpathSync(one) === realpathSync(other);
}
