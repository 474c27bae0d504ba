import { z } from 'zod';
import type { YardSheetLines } from '../../../shared/contract/print.ts';
import { dayOfIso, type IsoDay, isoOfDay } from '../../../shared/kernel/day.ts';
import { ok } from '../../../shared/kernel/result.ts';
import { IdField, IsoDayField } from '../../../shared/model/fields.ts';
import { english } from '../../../shared/text/english/english.ts';
import type { SettingTable } from '../../workbook/workbook.ts';
import type { Desk } from '../operation.ts';
import { yardSheetContent } from './yard-sheet-content.ts';

/** A yard sheet as it was printed: for which walk, and what each of its lines said. */
const PrintedSheet = z.object({
  walkOn: IsoDayField,
  yardId: IdField.nullable(),
  lines: z.enum(['walk', 'hives']),
  printedOn: IsoDayField,
  /** Code and words of each line. */
  said: z.array(z.tuple([z.string(), z.string()])),
  leaveAlone: z.string(),
});
export type PrintedSheet = z.infer<typeof PrintedSheet>;

export interface Walk {
  readonly walkOn: IsoDay;
  readonly yardId: string | null;
  readonly lines: YardSheetLines;
}

const KEY = 'printedYardSheets';
/** As many walks ahead as anybody prints; older notes give way. */
const MOST = 20;

/** The sheets noted as printed; a note that does not fit (any longer) counts as none. */
export function printedSheets(settings: SettingTable): readonly PrintedSheet[] {
  const parsed = z.array(PrintedSheet).safeParse(settings.get(KEY));
  return parsed.success ? parsed.data : [];
}

/**
 * What the sheet for a walk says, always in English with the day first, so that choosing another language or order of
 * days makes no printed sheet wrong.
 */
export function sheetAsText(desk: Desk, walk: Walk): Pick<PrintedSheet, 'said' | 'leaveAlone'> {
  const { rows, leaveAlone } = yardSheetContent({ ...desk, today: dayOfIso(walk.walkOn) }, walk, 'day-first', english);
  return {
    said: rows.map(({ code, kind, doing, last }) => [code, [kind, doing, last].join('\n')]),
    leaveAlone: leaveAlone.join('; '),
  };
}

/**
 * Notes that the sheet for a walk went to paper. Walks that are over are forgotten, and where the workbook cannot be
 * written the paper is made all the same.
 */
export function notePrintedSheet(desk: Desk, walk: Walk): void {
  const { lines } = walk;
  if (lines === 'blank') return;
  const printedOn = isoOfDay(desk.today);
  const note: PrintedSheet = { ...walk, lines, printedOn, ...sheetAsText(desk, walk) };
  const others = printedSheets(desk.workbook.tables.settings).filter(
    (one) =>
      one.walkOn >= printedOn && !(one.walkOn === walk.walkOn && one.yardId === walk.yardId && one.lines === lines),
  );
  desk.workbook.change({ did: 'print-yard-sheet', on: walk.walkOn }, (written) => {
    written.settings.put(KEY, [...others, note].slice(-MOST));
    return ok(null);
  });
}
