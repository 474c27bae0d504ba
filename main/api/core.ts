import type { CallReply } from '../../shared/contract/call.ts';
import type { Refusal } from '../../shared/contract/refusal.ts';
import type { WorkbookState } from '../../shared/contract/workbook.ts';
import type { Language } from '../../shared/kernel/language.ts';
import { PROGRAM_VERSION } from '../../shared/kernel/program-version.ts';
import type { Result } from '../../shared/kernel/result.ts';
import { buildDemo, DEMO_DAY } from '../demo/build-demo.ts';
import type { Reckoner } from '../engine/yield/reckon.ts';
import type { Lifecycle } from '../operations/workbook/lifecycle.ts';
import { openWorkbook } from '../operations/workbook/open-workbook.ts';
import { workbookLanguage } from '../operations/workbook-words.ts';
import type { Clock, Ids } from '../ports/ports.ts';
import { startKeeper } from '../workbook/keeper.ts';
import { readMigrations } from '../workbook/migrations.ts';
import { checkHere } from '../workbook/thorough-look.ts';
import type { CheckFile, Keeper } from '../workbook/workbook.ts';
import { dispatch } from './dispatch.ts';

export interface CoreSetting {
  readonly clock: Clock;
  readonly ids: Ids;
  /** Where rates are reckoned: in a thread of their own, so that a start need not load what reckons them. */
  readonly reckon: Reckoner;
  /** Looks at a copy of the open workbook's pages; in this thread when missing. */
  readonly checkFile?: CheckFile;
  /** The computer's language; English when missing. */
  readonly computerLanguage?: Language;
  readonly places: {
    /** Where workbooks are put unless the person says otherwise. */
    readonly documents: string;
    /** The program's own folder: memory of workbooks, safety copies, demo. */
    readonly programData: string;
    /** The folder with the numbered .sql files. */
    readonly migrations: string;
  };
  /** Told of errors that are our own mistakes; the page learns only that there was one. */
  readonly report?: (error: unknown) => void;
}

/** Everything a shell needs of the program behind the window. */
export interface Core {
  /** Answers one call of the page. Never throws. */
  call(request: unknown): Promise<CallReply>;
  /** Opens a workbook the system handed over (double click, second start). */
  openFile(file: string): Promise<Result<WorkbookState, Refusal>>;
  /** The language of the open workbook, and the computer's while none is open; the shell speaks it too. */
  language(): Language;
  /** Closes the workbook cleanly; the next start opens it again. */
  close(): Promise<void>;
}

/** Starts the core: the workbook in use last is open when this returns, if it is where it was. */
export function createCore({
  clock,
  ids,
  reckon,
  checkFile = checkHere,
  computerLanguage = 'en',
  places,
  report = () => {},
}: CoreSetting): Core {
  const keeper = startKeeper({
    documents: places.documents,
    programData: places.programData,
    migrations: readMigrations(places.migrations),
    now: () => clock.now(),
    checkFile,
    report,
  });
  const lifecycle: Lifecycle = {
    keeper,
    clock,
    ids,
    reckon,
    computerLanguage,
    version: PROGRAM_VERSION,
    demo: { day: DEMO_DAY, build: buildDemo },
  };
  const copying = setInterval(() => lookAfterWorkbook(keeper, report), LOOK_FOR_DUE_COPY);
  // Must not keep a program alive that is otherwise done.
  copying.unref();
  return {
    call: (request) => dispatch(lifecycle, request, report),
    openFile: (file) => Promise.resolve(openWorkbook(lifecycle, { file })),
    language: () => {
      const workbook = keeper.current;
      return workbook === null ? computerLanguage : workbookLanguage({ workbook, computerLanguage });
    },
    close: () => {
      clearInterval(copying);
      keeper.stop();
      return Promise.resolve();
    },
  };
}

/** Milliseconds between two looks at whether a safety copy is due; the keeper decides. */
const LOOK_FOR_DUE_COPY = 15_000;

function lookAfterWorkbook({ copies }: Keeper, report: (error: unknown) => void): void {
  copies.checkIfDue().catch(report);
  try {
    copies.makeIfDue();
  } catch (error) {
    report(error);
  }
}
