import { chmodSync, existsSync } from 'node:fs';
import { join } from 'node:path';
import type { Refusal } from '../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../shared/kernel/result.ts';
import { makeFolder } from './create-workbook.ts';
import { flushFile, moveIntoPlace, PRIVATE_FILE, removeLeftover } from './durable-file.ts';
import { MARKS, WORKBOOK_ENDING } from './file-marks.ts';
import { writeBuiltWorkbook } from './memory-workbook.ts';
import { type OpenSetting, openWorkbookFile } from './open-workbook.ts';
import { openingTrouble } from './opening-trouble.ts';
import type { Workbook } from './workbook.ts';

const DEMO_NAME = 'Demo yard';

/**
 * Opens the demo, a file of its own beside the program's data. It is built anew when it is missing, unreadable or from
 * another version of the program; whoever played in it loses nothing that was theirs.
 */
export function openDemoFile(
  folder: string,
  version: string,
  build: (demo: Workbook) => void,
  setting: OpenSetting,
): Result<Workbook, Refusal> {
  const file = join(folder, `demo${WORKBOOK_ENDING}`);
  const known = existsSync(file) ? openWorkbookFile(file, setting) : null;
  if (known !== null) {
    if (known.ok && known.value.tables.settings.get(MARKS.builtBy) === version) return known;
    if (known.ok) known.value.close();
    else if (known.refusal.kind === 'workbook-open-elsewhere') return known;
  }
  try {
    makeFolder(folder);
    buildAnew(file, version, build, setting);
  } catch (error) {
    return refuse(openingTrouble(error, file));
  }
  return openWorkbookFile(file, setting);
}

/** Hundreds of changes, so in memory; and under another name until it is whole. */
function buildAnew(
  file: string,
  version: string,
  build: (demo: Workbook) => void,
  { migrations, now }: OpenSetting,
): void {
  const unfinished = `${file}.new`;
  removeLeftover(unfinished);
  writeBuiltWorkbook(unfinished, { migrations, now, name: DEMO_NAME, kind: 'demo' }, (demo) => {
    build(demo);
    const marked = demo.change({ did: 'other' }, ({ settings }) => ok(settings.put(MARKS.builtBy, version)));
    if (!marked.ok) throw new Error(`The demo could not be marked: ${marked.refusal.kind}.`);
  });
  chmodSync(unfinished, PRIVATE_FILE);
  flushFile(unfinished);
  removeLeftover(file);
  moveIntoPlace(unfinished, file);
}
