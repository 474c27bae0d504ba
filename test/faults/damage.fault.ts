import { createHash, randomBytes } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { contentDigest } from '../../main/workbook/content-digest.ts';
import { type CopyNote, readNote } from '../../main/workbook/copy-note.ts';
import { lookingFolderOf } from '../../main/workbook/looking-copy.ts';
import { type OpenSetting, openWorkbookFile } from '../../main/workbook/open-workbook.ts';
import { checkHere, lookThoroughly } from '../../main/workbook/thorough-look.ts';
import type { Soundness, Workbook } from '../../main/workbook/workbook.ts';
import type { FaultReport } from './fault-report.ts';
import { aFullWorkbook, settingIn } from './sample-workbook.ts';

const PAGE = 4096;
const below = (most: number): number => Math.floor(Math.random() * most);

/** What a drive, a cable or a sync program does to a file that is closed. */
const DAMAGES: Readonly<Record<string, (bytes: Buffer) => Buffer>> = {
  'one bit': (bytes) => {
    const at = below(bytes.length);
    bytes[at] = (bytes[at] ?? 0) ^ (1 << below(8));
    return bytes;
  },
  'page of zeros': (bytes) => {
    const page = below(bytes.length / PAGE) * PAGE;
    return bytes.fill(0, page, page + PAGE);
  },
  '512 bytes of noise': (bytes) => {
    randomBytes(512).copy(bytes, below(bytes.length / 512) * 512);
    return bytes;
  },
  'cut short': (bytes) => bytes.subarray(0, below(bytes.length)),
  'page of another place': (bytes) => {
    const [to, from] = [1 + below(bytes.length / PAGE - 1), 1 + below(bytes.length / PAGE - 1)];
    bytes.copyWithin(to * PAGE, from * PAGE, (from + 1) * PAGE);
    return bytes;
  },
  'one byte of the header': (bytes) => {
    bytes[below(100)] = below(256);
    return bytes;
  },
};

interface Tally {
  files: number;
  refused: number;
  shownAndNamed: number;
  harmless: number;
  undetected: number;
  crashed: number;
  changedByUs: number;
  errors: string[];
}

/** A closed workbook is damaged: it is refused, or the look after opening names the damage, or no row differs. */
export async function faults({ short }: { readonly short: boolean }): Promise<readonly FaultReport[]> {
  const ofEach = short ? 10 : 1000;
  const folder = mkdtempSync(join(tmpdir(), 'ripecell-damage-'));
  try {
    const scene = aClosedWorkbook(folder);
    const reports: FaultReport[] = [];
    for (const [kind, damage] of Object.entries(DAMAGES)) reports.push(await damageReport(kind, damage, ofEach, scene));
    return [...reports, await blindReport(scene)];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

interface Scene {
  readonly file: string;
  readonly whole: Buffer;
  readonly note: CopyNote;
  readonly setting: OpenSetting;
}

function aClosedWorkbook(folder: string): Scene {
  const setting = settingIn(folder);
  const workbook = aFullWorkbook(folder, setting);
  const copy = workbook.keepCopy('close');
  const note = copy.ok && copy.value !== null ? readNote(copy.value) : null;
  if (note === null) throw new Error('The copy at closing has no note.');
  workbook.close();
  return { file: workbook.file, whole: readFileSync(workbook.file), note, setting };
}

async function damageReport(
  kind: string,
  damage: (bytes: Buffer) => Buffer,
  times: number,
  scene: Scene,
): Promise<FaultReport> {
  const tally: Tally = {
    ...{ files: 0, refused: 0, shownAndNamed: 0, harmless: 0, undetected: 0, crashed: 0, changedByUs: 0 },
    errors: [],
  };
  for (let time = 0; time < times; time += 1) await oneDamage(damage(Buffer.from(scene.whole)), scene, tally);
  const { errors, ...counts } = tally;
  const isGood = tally.undetected + tally.crashed + tally.changedByUs === 0;
  return {
    harness: `damaged file: ${kind}`,
    outcome: isGood ? 'passed' : 'failed',
    figures: [
      ...Object.entries(counts).map(([what, times]) => `damage ${kind}: ${what} ${times}`),
      ...new Set(errors.map((error) => `damage ${kind}: ${error}`)),
    ],
  };
}

async function oneDamage(damaged: Buffer, scene: Scene, tally: Tally): Promise<void> {
  const { file, note, setting } = scene;
  tally.files += 1;
  for (const ending of ['-wal', '-journal']) rmSync(file + ending, { force: true });
  writeFileSync(file, damaged);
  try {
    const opened = openWorkbookFile(file, setting);
    if (!opened.ok) {
      tally.refused += 1;
      if (sha256(readFileSync(file)) !== sha256(damaged)) tally.changedByUs += 1;
      return;
    }
    // As the keeper looks at it a little after opening.
    const found = await looked(opened.value, note, setting);
    if (found !== 'sound') tally.shownAndNamed += 1;
    else if (digestIn(file) === note.digest) tally.harmless += 1;
    else tally.undetected += 1;
  } catch (error) {
    tally.crashed += 1;
    tally.errors.push(String(error));
  }
}

async function looked(workbook: Workbook, note: CopyNote | null, setting: OpenSetting): Promise<Soundness | null> {
  try {
    return await lookThoroughly(workbook, note, lookingFolderOf(setting.safetyFolder), checkHere);
  } finally {
    workbook.close();
  }
}

/** The same look without a digest must miss changed rows: without this the figures above would prove nothing. */
async function blindReport({ file, whole, note, setting }: Scene): Promise<FaultReport> {
  let missed = 0;
  const tries = 20;
  for (let time = 0; time < tries; time += 1) {
    const bytes = Buffer.from(whole);
    const place = placesOf(bytes, '"note":"')[time] ?? 0;
    bytes[place + 8] = (bytes[place + 8] ?? 0) ^ 1;
    for (const ending of ['-wal', '-journal']) rmSync(file + ending, { force: true });
    writeFileSync(file, bytes);
    const opened = openWorkbookFile(file, setting);
    if (!opened.ok) continue;
    const withDigest = await lookThoroughly(opened.value, note, lookingFolderOf(setting.safetyFolder), checkHere);
    if ((await looked(opened.value, null, setting)) === 'sound' && withDigest === 'changed') missed += 1;
  }
  return {
    harness: 'damaged file control: without the digest a planted change must be missed, with it found',
    outcome: missed > 0 ? 'passed' : 'failed',
    figures: [`damage control missed without the digest, found with it ${missed} of ${tries}`],
  };
}

function placesOf(bytes: Buffer, text: string): readonly number[] {
  const places: number[] = [];
  for (let at = bytes.indexOf(text); at >= 0; at = bytes.indexOf(text, at + 1)) places.push(at);
  return places;
}

const sha256 = (bytes: Buffer): string => createHash('sha256').update(bytes).digest('hex');

function digestIn(file: string): string {
  const db = new Database(file, { readonly: true });
  try {
    return contentDigest(db);
  } finally {
    db.close();
  }
}
