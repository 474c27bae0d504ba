import type { Day, IsoDay } from '../../kernel/day.ts';
import { unreachable } from '../../kernel/unreachable.ts';
import type { ClashOf, StartTroubleOf } from '../../model/clash.ts';
import { STEP_TITLES } from './step-titles.ts';

type Clash = ClashOf<Day | IsoDay>;
type StartTrouble = StartTroubleOf<Day | IsoDay>;

/** How the page names things a clash speaks of. */
export interface ClashNames {
  readonly batch: (id: string) => string;
  readonly hive: (id: string) => string;
  readonly box: (id: string) => string;
  readonly day: (day: Day | IsoDay) => string;
}

/** Words of the places that show clashes and start days. */
export const clashWords = {
  ahead: 'Clashes ahead',
  one: 'Clashes of this batch',
  none: 'Nothing stands in the way.',
  thisBatch: 'this batch',
  whichDay: 'Which day to start?',
  columns: { day: 'Day', means: 'What it would mean' },
  take: 'Take',
  takeDay: (day: string) => `Take ${day}`,
  taken: 'taken',
  good: 'Good.',
  goodDays: (good: number, of: number) =>
    `${good === 1 ? 'One good day' : `${good} good days`} in the coming ${of}, those that fit best first.`,
  noGoodDay: (of: number) => `None of the coming ${of} days suits in everything. See what each would mean.`,
  showAll: (days: number) => `Show all ${days} days`,
  showGood: 'Show the good days only',
  shifted: (steps: readonly string[]) =>
    `${steps.map((step) => `“${step}”`).join(' and ')} on another day of ${steps.length === 1 ? 'its' : 'their'} window.`,
  gives: (place: string | null, emerges: string) =>
    place === null ? `Queens out ${emerges}.` : `Cells move ${place}, queens out ${emerges}.`,
} as const;

/** One sentence per clash: what, with its dates, and what would resolve it. */
export function clashSentence(clash: Clash, names: ClashNames): string {
  const sentence = clashText(clash, names);
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}

function clashText(clash: Clash, names: ClashNames): string {
  const { batch, hive, day } = names;
  switch (clash.kind) {
    case 'builder-busy':
      return `${batch(clash.batch)} needs ${hive(clash.builderId)} from ${day(clash.on)}, but it holds the cells of ${batch(clash.other)} until ${day(clash.holdsUntil)} and rests after that. Start on ${day(clash.freeFrom)} or later, or use another builder.`;
    case 'too-many-cells':
      return `${batch(clash.batch)} has ${clash.cells} cells in ${hive(clash.builderId)}; about ${clash.usualMost} is what one builder finishes well. Share them over ${clash.builders} builders, or start fewer.`;
    case 'too-few-boxes':
      return `On ${day(clash.on)} ${clash.cells === 1 ? 'one cell is' : `up to ${clash.cells} cells are`} ripe, ${boxesSaid(clash, day)}`;
    case 'ages-mixed-on-bar':
      return `One bar holds cells of ${batch(clash.batch)}, given ${day(clash.on)}, and of ${batch(clash.other)}, given ${day(clash.otherOn)}. The older queens would destroy the younger cells: mark them, or move one set to a bar of its own.`;
    case 'must-step-away':
      return `“${STEP_TITLES[clash.step]}” of ${batch(clash.batch)} falls on ${day(clash.on)}, ${clash.reason === 'away' ? 'when you are away' : 'which is not one of your days'}. ${awayRemedy(clash.suits, day)}`;
    case 'job-in-hands-off':
      return `“${STEP_TITLES[clash.step]}” of ${batch(clash.batch)} falls on ${day(clash.on)}, but ${hive(clash.hiveId)} must be left alone for the cells of ${batch(clash.other)} until ${day(clash.until)}. The nearest free days are ${clash.alternatives.map(day).join(' and ')}; or take larvae from another hive.`;
    case 'no-drones-yet':
      return `Queens of ${batch(clash.batch)} may fly from ${day(clash.fliesFrom)}, but the first drones are not mature before ${day(clash.dronesMatureFrom)}. Start ${days(clash.daysLater)} later, or look for sealed drone brood in other hives.`;
    default:
      return unreachable(clash);
  }
}

/** Why a day is no good for starting. */
export function startTroubleSentence(trouble: StartTrouble, names: Pick<ClashNames, 'batch' | 'day'>): string {
  const { batch, day } = names;
  switch (trouble.kind) {
    case 'must-step-away':
      return `“${STEP_TITLES[trouble.step]}” on ${day(trouble.on)} does not suit you, and no other day would do.`;
    case 'starts-in-past':
      return `“${STEP_TITLES[trouble.step]}” would have been due on ${day(trouble.on)}.`;
    case 'builder-taken':
      return `The builder is taken by ${batch(trouble.batch)} or rests until ${day(trouble.until)}.`;
    case 'too-few-boxes':
      return `On ${day(trouble.on)}, ${boxes(trouble.freeBoxes)} free for ${trouble.cells} cells.`;
    case 'no-drones-yet':
      return `Queens may fly from ${day(trouble.fliesFrom)}, the first drones are mature from ${day(trouble.dronesMatureFrom)}.`;
    default:
      return unreachable(trouble);
  }
}

const boxes = (count: number): string =>
  count === 0 ? 'no mating box is' : count === 1 ? 'one mating box is' : `${count} mating boxes are`;
const days = (count: number): string => (count === 1 ? 'a day' : `${count} days`);

type TooFewBoxes = Extract<Clash, { kind: 'too-few-boxes' }>;

const NO_BOX_YET =
  'and there is no mating box in the workbook yet. Add boxes under Mating boxes, or plan to keep the cells in cages.';

const boxesSaid = (clash: TooFewBoxes, day: ClashNames['day']): string =>
  clash.boxes === 0 ? NO_BOX_YET : `and ${boxes(clash.freeBoxes)} free. ${boxRemedy(clash, day)}`;

function boxRemedy({ cells, deadline, freeByDeadline }: TooFewBoxes, day: ClashNames['day']): string {
  if (freeByDeadline >= cells) return `Place the rest by ${day(deadline)}, when enough boxes are free.`;
  return `Make ${cells - freeByDeadline} more ready by ${day(deadline)}, or keep the spare cells in cages.`;
}

function awayRemedy(suits: readonly (Day | IsoDay)[], day: ClashNames['day']): string {
  if (suits.length === 0) return 'No other day is safe: ask someone to do it, or start on another day.';
  return `It can be done on ${suits.map(day).join(' or ')}.`;
}
