import { type Day, daysBetween } from '../../shared/kernel/day.ts';
import { hatch } from './hatch.ts';
import type { PaperDocument } from './paper-document.ts';
import { type Handout, MARGIN, RULE, type Sheet, SMALL } from './timetable-frame.ts';

/** Millimetres: the band of stages, and under it the days to keep hands off. */
const TOP = 24;
const BAND = 9;
const GATES = 5;
const DOT = 0.35;

/**
 * The life of the batch from left to right, a column a day: its stages by name and texture, the days to keep hands off
 * hatched below, the days on which queens may emerge framed, and a mark for each day with something to do.
 */
export function drawStream({ handout, document, width }: Sheet): void {
  const { rows, firstDay, stages, handsOff, emergence, words } = handout;
  const last = Math.max(
    firstDay + 1,
    ...rows.map(({ day }) => day),
    ...handsOff.map(({ to }) => to),
    ...stages.map(({ to }) => to),
  ) as Day;
  const step = (width - 2 * MARGIN) / (daysBetween(firstDay, last) + 1);
  const left = (day: Day): number => MARGIN + daysBetween(firstDay, day) * step;
  const bottom = TOP + BAND + GATES;
  for (const [index, { name, from, to }] of stages.entries()) {
    const until = index === stages.length - 1 ? last + 1 : to;
    drawStage(document, name, index, left(from), left(until as Day));
  }
  for (let day = firstDay; day <= last; day = (day + 1) as Day) {
    document.line(left(day), TOP + BAND, left(day), bottom, RULE);
    const after = daysBetween(handout.larvaeGivenOn, day);
    if (after % 5 === 0) document.text(String(after), 'regular', SMALL, left(day) + 0.6, bottom + 4);
  }
  for (const { from, to } of handsOff)
    hatch(document, [{ x: left(from), width: (daysBetween(from, to) + 1) * step }], TOP + BAND, GATES);
  const window = (daysBetween(emergence.earliest, emergence.latest) + 1) * step;
  document.rectangle(left(emergence.earliest), TOP - 1.5, window, BAND + GATES + 3, 0.6);
  document.rectangle(MARGIN, TOP, width - 2 * MARGIN, BAND + GATES, 0.3);
  document.line(MARGIN, TOP + BAND, width - MARGIN, TOP + BAND, 0.3);
  for (const row of rows) document.line(left(row.day) + step / 2, TOP - 1.5, left(row.day) + step / 2, TOP + 1.5, 0.5);
  document.text(words.handout.ruler, 'regular', SMALL, MARGIN, bottom + 9);
}

/** Said instead of the picture: how it is read, and each stage with its days. */
export function pictureInWords({ words, stages, larvaeGivenOn }: Handout): string {
  const spans = stages.map(({ name, from, to }) =>
    words.handout.stageDays(name, daysBetween(larvaeGivenOn, from), daysBetween(larvaeGivenOn, to)),
  );
  return `${words.handout.ruler} ${spans.join('; ')}.`;
}

/** Dots, lines upright, slanted and level in turn, so that neighbours differ without colour; the name stands clear. */
function drawStage(document: PaperDocument, name: string, index: number, from: number, to: number): void {
  const end = TOP + BAND;
  if (index % 4 === 1) {
    for (let x = from + 1.4; x < to - 0.6; x += 2.4)
      for (let y = TOP + 1.4; y < end; y += 2.4) document.line(x, y, x + DOT, y, DOT);
  } else if (index % 4 === 2) {
    for (let x = from + 1.6; x < to - 0.4; x += 1.6) document.line(x, TOP, x, end, RULE);
  } else if (index % 4 === 3) {
    for (let y = TOP + 1.5; y < end; y += 1.5) document.line(from, y, to, y, RULE);
  }
  document.line(from, TOP, from, end, 0.3);
  const room = document.measure(name, 'bold', SMALL);
  if (room + 2 > to - from) return;
  const x = (from + to - room) / 2;
  document.clear(x - 0.8, TOP + 2.2, room + 1.6, 4.8);
  document.text(name, 'bold', SMALL, x, TOP + 5.7);
}
