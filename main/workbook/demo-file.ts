import { existsSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import type { Refusal } from '../../shared/contract/refusal.ts';
import { ok, type Result } from '../../shared/kernel/result.ts';
import { createWorkbookFile, makeFolder } from './create-workbook.ts';
import { removeLeftover } from './durable-file.ts';
import { MARKS, WORKBOOK_ENDING } from './file-marks.ts';
import { type OpenSetting, openWorkbookFile } from './open-workbook.ts';
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
  makeFolder(folder);
  const file = join(folder, `demo${WORKBOOK_ENDING}`);
  const known = existsSync(file) ? openWorkbookFile(file, setting) : null;
  if (known !== null) {
    if (known.ok && known.value.tables.settings.get(MARKS.builtBy) === version) return known;
    if (known.ok) known.value.close();
    else if (known.refusal.kind === 'workbook-open-elsewhere') return known;
    removeLeftover(file);
  }
  return buildAnew(file, version, build, setting);
}

/** Built under another name, so that a demo that was cut short is never taken for a whole one. */
function buildAnew(
  file: string,
  version: string,
  build: (demo: Workbook) => void,
  setting: OpenSetting,
): Result<Workbook, Refusal> {
  const unfinished = `${file}.building`;
  removeLeftover(unfinished);
  const created = createWorkbookFile({ file: unfinished, name: DEMO_NAME, kind: 'demo' }, setting);
  if (!created.ok) return created;
  const demo = created.value;
  try {
    build(demo);
    const marked = demo.change('mark the demo as finished', (tables) => {
      tables.settings.put(MARKS.builtBy, version);
      return ok(null);
    });
    if (!marked.ok) return marked;
  } finally {
    demo.close();
  }
  renameSync(unfinished, file);
  return openWorkbookFile(file, setting);
}
