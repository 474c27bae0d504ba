import type { z } from 'zod';
import type { PaperFile, PrintTimetable } from '../../../shared/contract/print.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { earlierOf } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { DatedStep } from '../../../shared/model/step.ts';
import { english, type Words } from '../../../shared/text/english/english.ts';
import { stepWords } from '../../../shared/text/sentences.ts';
import { planTimetable } from '../../engine/calendar/plan-timetable.ts';
import { type StreamBand, streamDays } from '../../engine/calendar/stream-picture.ts';
import { emptyTally } from '../../engine/yield/batch-tally.ts';
import { largeTimetablePdf } from '../../paper/large-timetable-pdf.ts';
import type { Handout, HandoutRow } from '../../paper/timetable-frame.ts';
import { timetablePdf } from '../../paper/timetable-pdf.ts';
import { plainInput } from '../batch-calendar.ts';
import type { Desk } from '../operation.ts';
import { storedSettings } from '../stored-settings.ts';
import { workbookWords } from '../workbook-words.ts';

/** The words of the trade that a timetable uses, as the English glossary has them. */
const TIMETABLE_WORDS: readonly (typeof english.glossary.list)[number]['word'][] = [
  ...(['breeder', 'builder', 'batch', 'bar', 'given', 'taken', 'sealed'] as const),
  ...(['hands off', 'mating box', 'laying', 'proved', 'drone-layer'] as const),
];

/** The timetable of any method as a paper for the class. */
export async function printTimetable(
  desk: Desk,
  { variant, paper, large = false, ...chosen }: z.input<typeof PrintTimetable>,
): Promise<Result<PaperFile, Refusal>> {
  const { tables } = desk.workbook;
  const words = workbookWords(desk);
  const { method, comb, anchorOn } = chosen;
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
  const life = streamDays(planned.value, emptyTally('class'), null).bands;
  const told = steps.filter(({ kind }) => kind !== 'warning');
  const pdf = await (large ? largeTimetablePdf : timetablePdf)({
    words,
    method: words.methods[method].name,
    firstDay: told.reduce((first, { expected }) => earlierOf(first, expected), larvaeGivenOn),
    larvaeGivenOn,
    rows: told.map((step) => rowOf(step, life, chosen, words)),
    stages: life.map(({ stage, from, to }) => ({ name: words.batches.stream.stages[stage], from, to })),
    handsOff,
    emergence,
    sources: words.sources.told([...new Set(told.flatMap(({ source }) => source.split('; ')))].join('; ')),
    glossary: timetableWords(words),
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

function rowOf(
  { step, kind, expected, daysAfterLarvae }: DatedStep,
  life: readonly StreamBand[],
  { method, builderType }: Pick<z.infer<typeof PrintTimetable>, 'method' | 'builderType'>,
  words: Words,
): HandoutRow {
  const { title, what } = stepWords(words, step, method, builderType);
  const bees = words.handout.bees[life.find(({ to }) => expected < to)?.stage ?? 'laying'];
  return { day: expected, daysAfterLarvae, bees, title, what, handsOff: kind === 'hands-off' };
}

function timetableWords({ glossary }: Words): Handout['glossary'] {
  const places = TIMETABLE_WORDS.map((word) => english.glossary.list.findIndex((one) => one.word === word));
  return places.flatMap((place) => glossary.list[place] ?? []);
}
