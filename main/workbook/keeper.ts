import { existsSync, realpathSync } from 'node:fs';
import { join } from 'node:path';
import type { Refusal } from '../../shared/contract/refusal.ts';
import { ok, type Result } from '../../shared/kernel/result.ts';
import { createWorkbookFile, makeFolder } from './create-workbook.ts';
import { openDemoFile } from './demo-file.ts';
import { fileNameOf } from './file-name.ts';
import { workbookMemory } from './known-workbooks.ts';
import type { Migration } from './migrations.ts';
import { type OpenSetting, openWorkbookFile } from './open-workbook.ts';
import { removeUnfinishedCopies } from './safety-copy.ts';
import { notSavedReason } from './save-trouble.ts';
import type { Keeper, Workbook } from './workbook.ts';

export interface KeeperSetting {
  /** Where workbooks are put unless the person says otherwise. */
  readonly documents: string;
  /** The program's own folder: memory, safety copies, demo. */
  readonly programData: string;
  readonly migrations: readonly Migration[];
  readonly now: () => string;
  /** Told of an error of our own at the start, which must not keep the window from opening. */
  readonly report: (error: unknown) => void;
}

/** Opens the workbook in use last, if it is where it was; a missing one is reported and never replaced by a blank. */
export function startKeeper({ documents, programData, migrations, now, report }: KeeperSetting): Keeper {
  const memory = workbookMemory(programData);
  const setting: OpenSetting = { migrations, safetyFolder: join(programData, 'safety-copies'), now };
  let current: Workbook | null = null;

  /** A workbook that opened takes the place of the one before; otherwise all stays as it was. */
  function changeTo(opened: Result<Workbook, Refusal>): Result<Workbook, Refusal> {
    if (!opened.ok) return opened;
    current?.close();
    current = opened.value;
    if (current.kind === 'real') memory.remember({ name: current.name, file: current.file });
    return opened;
  }

  const keeper: Keeper = {
    get current() {
      return current;
    },
    known: () => knownNow(memory, documents),
    begin(name, folder) {
      const file = join(folder ?? documents, fileNameOf(name));
      if (folder === null) makeFolderIfPossible(documents);
      return changeTo(createWorkbookFile({ file, name, kind: 'real' }, setting));
    },
    open(file) {
      if (current !== null && isSameFile(current.file, file)) return ok(current);
      return changeTo(openWorkbookFile(file, setting));
    },
    openDemo(version, build) {
      if (current?.kind === 'demo') return ok(current);
      return changeTo(openDemoFile(join(programData, 'demo'), version, build, setting));
    },
    close() {
      if (current?.kind === 'real') memory.forgetLast();
      keeper.stop();
    },
    stop() {
      current?.close();
      current = null;
    },
  };
  try {
    removeUnfinishedCopies(setting.safetyFolder);
    const { last } = memory.read();
    if (last !== null && existsSync(last.file)) keeper.open(last.file);
  } catch (error) {
    report(error);
  }
  return keeper;
}

function knownNow(memory: ReturnType<typeof workbookMemory>, documents: string): ReturnType<Keeper['known']> {
  const { last, recent } = memory.read();
  return {
    missing: last !== null && !existsSync(last.file) ? last : null,
    recent: recent.map(({ name, file }) => ({ name, file, found: existsSync(file) })),
    usualFolder: documents,
  };
}

/** The folder we offer ourselves may be missing on a new account; if it cannot be made, beginning says so. */
function makeFolderIfPossible(folder: string): void {
  try {
    makeFolder(folder);
  } catch (error) {
    if (notSavedReason(error) === null) throw error;
  }
}

/** By the names of the files, without opening either. */
function isSameFile(one: string, other: string): boolean {
  if (!existsSync(one) || !existsSync(other)) return false;
  return realpathSync(one) === realpathSync(other);
}
