import type { StaleSheet } from '../../../shared/contract/print.ts';
import { type IsoDay, isoOfDay } from '../../../shared/kernel/day.ts';
import type { Tables } from '../../workbook/workbook.ts';
import type { Desk } from '../operation.ts';
import { type PrintedSheet, printedSheets, sheetAsText } from './printed-sheets.ts';

/** Yard sheets printed for today or a day to come that no longer say what is right, each with the lines that differ. */
export function listStaleSheets(desk: Desk): readonly StaleSheet[] {
  const { tables } = desk.workbook;
  const today = isoOfDay(desk.today);
  return printedSheets(tables.settings)
    .filter(({ walkOn }) => walkOn >= today)
    .flatMap((sheet) => {
      const { walkOn, yardId, lines, printedOn } = sheet;
      const now = sheetAsText(desk, sheet);
      const done = walkOn === today ? lookedInto(tables, today) : new Set<string>();
      const changed = differing(sheet.said, now.said).filter((code) => !done.has(code));
      const leaveAlone = sheet.leaveAlone !== now.leaveAlone;
      if (changed.length === 0 && !leaveAlone) return [];
      const yard = yardId === null ? null : (tables.yards.get(yardId)?.name ?? null);
      return [{ walkOn, yard, lines, printedOn, changed, leaveAlone }];
    });
}

/** Codes of lines that say something else, are new, or are gone. */
function differing(was: PrintedSheet['said'], now: PrintedSheet['said']): readonly string[] {
  const before = new Map(was);
  const after = new Map(now);
  return [...new Set([...before.keys(), ...after.keys()])].filter((code) => before.get(code) !== after.get(code));
}

/** What the walk of the day itself brought home is no fault of its sheet: boxes and hives looked into, and jobs done. */
function lookedInto(tables: Tables, today: IsoDay): ReadonlySet<string> {
  const boxes = tables.boxLooks.where({ lookedOn: today }).map(({ boxId }) => tables.boxes.get(boxId)?.code);
  const hives = tables.hiveLooks.where({ lookedOn: today }).map(({ colonyId }) => tables.colonies.get(colonyId)?.code);
  const jobs = tables.stepsDone.where({ doneOn: today }).flatMap(({ batchId }) => {
    const batch = tables.batches.get(batchId);
    return [batch?.breederId, batch?.builderId].map((id) => (id ? tables.colonies.get(id)?.code : undefined));
  });
  return new Set([...boxes, ...hives, ...jobs].filter((code) => code !== undefined));
}
