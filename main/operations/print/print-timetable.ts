import type { z } from 'zod';
import type { PaperFile, PrintTimetable } from '../../../shared/contract/print.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { earlierOf } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { stepWords } from '../../../shared/text/sentences.ts';
import { planTimetable } from '../../engine/calendar/plan-timetable.ts';
import { largeTimetablePdf } from '../../paper/large-timetable-pdf.ts';
import { timetablePdf } from '../../paper/timetable-pdf.ts';
import { plainInput } from '../batch-calendar.ts';
import type { Desk } from '../operation.ts';
import { storedSettings } from '../stored-settings.ts';
import { workbookWords } from '../workbook-words.ts';

/** The timetable of any method as a paper for the class. */
export async function printTimetable(
  desk: Desk,
  { variant, paper, large = false, ...chosen }: z.input<typeof PrintTimetable>,
): Promise<Result<PaperFile, Refusal>> {
  const { tables } = desk.workbook;
  const words = workbookWords(desk);
  const { method, comb, builderType, anchorOn } = chosen;
  if (method === 'cut-comb-edge' && comb === null) return refuse({ kind: 'comb-needed', field: 'comb' });
  const input = {
    ...chosen,
    methodCopyId: null,
    builderId: null,
    larvaAgeFromHours: null,
    larvaAgeToHours: null,
    sealedCelsius: null,
    cellsPlanned: null,
  };
  const planned = planTimetable(plainInput(tables, input, null));
  if (!planned.ok) return planned;
  const { steps, handsOff, emergence, larvaeGivenOn } = planned.value;
  const told = steps.filter(({ kind }) => kind !== 'warning');
  const pdf = await (large ? largeTimetablePdf : timetablePdf)({
    words,
    method: words.methods[method].name,
    firstDay: told.reduce((first, { expected }) => earlierOf(first, expected), larvaeGivenOn),
    larvaeGivenOn,
    rows: told.map(({ step, kind, expected, daysAfterLarvae }) => {
      const { title, what } = stepWords(words, step, method, builderType);
      return { day: expected, daysAfterLarvae, title, what, handsOff: kind === 'hands-off' };
    }),
    handsOff,
    emergence,
    sources: words.sources.told([...new Set(told.flatMap(({ source }) => source.split('; ')))].join('; ')),
    variant,
    paper,
    dateOrder: storedSettings(tables.settings).dateOrder,
    madeAt: `${anchorOn}T12:00:00Z`,
  });
  return ok({
    name: words.handout.fileName(method),
    mediaType: 'application/pdf',
    base64: pdf.bytes.toString('base64'),
    pages: pdf.pages,
  });
}
