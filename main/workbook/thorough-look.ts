import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Harm } from '../../shared/contract/copies.ts';
import type { CopyNote } from './copy-note.ts';
import { PRIVATE_FOLDER } from './durable-file.ts';
import { soundnessOfFile } from './safety-copy.ts';
import { codeOf, notSavedReason } from './save-trouble.ts';
import type { CheckFile, Soundness, Workbook } from './workbook.ts';

/** In the thread it is called in. */
export const checkHere: CheckFile = async (file, expectedDigest) => soundnessOfFile(file, expectedDigest);

/**
 * Pages, references and rows of the open workbook, looked at in a copy of its very pages: its lock lets no second
 * connection in, and looking at all of a large file at once would hold up saving. null where no copy could be made.
 * @param folder for the copy, which is gone again afterwards.
 */
export async function lookThoroughly(
  workbook: Workbook,
  note: CopyNote | null,
  folder: string,
  checkFile: CheckFile,
): Promise<Soundness | null> {
  let own: string | null = null;
  try {
    const expected = digestIfReadable(workbook, note);
    if (expected === 'unreadable') return 'damaged';
    mkdirSync(folder, { recursive: true, mode: PRIVATE_FOLDER });
    own = mkdtempSync(join(folder, 'pages-'));
    const file = join(own, 'pages');
    const copied = await workbook.copyPages(file);
    if (copied === 'damaged') return 'damaged';
    if (copied === 'not-copied') return null;
    return await checkFile(file, copied.changedMeanwhile ? null : expected);
  } catch (error) {
    if (notSavedReason(error) !== null) return null;
    throw error;
  } finally {
    if (own !== null) rmSync(own, { recursive: true, force: true });
  }
}

function digestIfReadable(workbook: Workbook, note: CopyNote | null): string | null | 'unreadable' {
  try {
    return note === null ? null : digestExpected(workbook, note);
  } catch (error) {
    // A text of the journal that is no JSON any more is damage as well.
    if (codeOf(error) === null && !(error instanceof SyntaxError)) throw error;
    return 'unreadable';
  }
}

/**
 * The digest of the copy, if it was taken of just this state of the file: the same last step of the journal, or the same
 * last change. Either is enough, so that damage to one of the two cannot pass for another state.
 */
function digestExpected(workbook: Workbook, note: CopyNote): string | null {
  if (note.file !== workbook.file || note.version !== workbook.version) return null;
  const step = workbook.journal.steps(null, 1)[0];
  const isSameStep = step !== undefined && note.lastStep?.id === step.id && note.lastStep.at === step.at;
  const isSameChange = note.changeNumber === workbook.changeNumber && note.changedAt === workbook.savedAt;
  return isSameStep || isSameChange ? note.digest : null;
}

/** So often a file must seem damaged, each time looked at anew, before it is called so: a failed read looks the same. */
const DAMAGE_TRIES = 2;

/** One thorough look at each workbook that was opened. */
export function onceForEach(look: (workbook: Workbook, note: CopyNote | null) => Promise<Soundness | null>) {
  let checked: Workbook | null = null;
  let triesLeft = DAMAGE_TRIES;
  let harm: Harm | null = null;
  let isLooking = false;
  return {
    found: (workbook: Workbook | null): Harm | null => (workbook !== null && workbook === checked ? harm : null),
    async run(workbook: Workbook, note: CopyNote | null): Promise<void> {
      if (isLooking) return;
      if (workbook !== checked) [checked, triesLeft, harm] = [workbook, DAMAGE_TRIES, null];
      if (triesLeft === 0) return;
      isLooking = true;
      try {
        const kind = await look(workbook, note);
        triesLeft = kind === 'damaged' || kind === null ? triesLeft - 1 : 0;
        if (kind !== 'sound' && kind !== null && triesLeft === 0) harm = { kind, copyAt: note?.at ?? null };
      } finally {
        isLooking = false;
      }
    },
  };
}
