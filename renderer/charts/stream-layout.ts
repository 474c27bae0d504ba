import type { StreamPicture, StreamStage } from '../../shared/contract/batches.ts';
import { addDays, type Day, dayOfIso, type IsoDay, isoOfDay } from '../../shared/kernel/day.ts';

/** Where everything of the batch picture lies, in pixels; drawn by Stream.tsx, checked by a golden test. */
export interface StreamLayout {
  readonly width: number;
  readonly height: number;
  /** The middle of the band, and its full thickness when all cells are alive. */
  readonly middle: number;
  readonly fullThickness: number;
  readonly bands: readonly {
    readonly stage: StreamStage;
    readonly x: number;
    readonly width: number;
    readonly y: number;
    readonly thickness: number;
    readonly alive: number | null;
    readonly forecast: boolean;
  }[];
  readonly gates: readonly {
    readonly x: number;
    readonly width: number;
    readonly step: string;
    /** Where its words stand: over its middle, or away from the word over today. */
    readonly label: { readonly x: number; readonly anchor: 'start' | 'middle' | 'end' };
  }[];
  readonly flags: readonly { readonly x: number; readonly step: string; readonly done: boolean }[];
  readonly losses: readonly {
    readonly x: number;
    readonly y: number;
    readonly cells: number;
    readonly setAside: number;
    readonly stage: StreamStage;
    /** Two losses close together turn their words away from each other. */
    readonly anchor: 'start' | 'end';
  }[];
  readonly wedge: { readonly from: number; readonly middle: number; readonly to: number };
  readonly threads: readonly {
    readonly box: string;
    readonly x: number;
    readonly y: number;
    readonly endX: number;
    readonly result: string | null;
  }[];
  readonly days: readonly { readonly x: number; readonly on: IsoDay; readonly labelled: boolean }[];
  readonly dayWidth: number;
  readonly todayX: number | null;
}

export interface StreamSize {
  readonly width: number;
  readonly height: number;
}

const EDGE = 8;
const TOP = 34;
const BOTTOM = 40;
const THINNEST = 3;
/** A day column narrower than this gets no letters of its own. */
const READABLE_DAY = 22;

export function layOutStream(stream: StreamPicture, { width, height }: StreamSize): StreamLayout {
  const from = dayOfIso(stream.from);
  const days = Math.max(1, dayOfIso(stream.to) - from);
  const dayWidth = (width - 2 * EDGE) / days;
  const x = (day: IsoDay | Day) => EDGE + ((typeof day === 'string' ? dayOfIso(day) : day) - from) * dayWidth;
  const fullThickness = height - TOP - BOTTOM - 26;
  const middle = TOP + fullThickness / 2;
  const underBand = middle + fullThickness / 2 + 14;
  const most = Math.max(1, ...stream.bands.map((band) => band.alive ?? 0));
  const thicknessOf = (alive: number | null) => Math.max(THINNEST, ((alive ?? most) / most) * fullThickness);
  const bands = stream.bands.map((band) => {
    const thickness = thicknessOf(band.alive);
    return {
      stage: band.stage,
      x: x(band.from),
      width: x(band.to) - x(band.from),
      y: middle - thickness / 2,
      thickness,
      alive: band.alive,
      forecast: band.forecast,
    };
  });
  const today = dayOfIso(stream.today);
  const todayX = today >= from && today <= from + days ? x(today) : null;
  return {
    width,
    height,
    middle,
    fullThickness,
    bands,
    gates: stream.gates.map((gate) => {
      const place = { x: x(gate.from), width: (dayOfIso(gate.to) - dayOfIso(gate.from) + 1) * dayWidth };
      return { ...place, step: gate.step, label: labelOver(place, todayX) };
    }),
    flags: stream.flags.map((flag) => ({ x: x(flag.on), step: flag.step, done: flag.done })),
    losses: turnedApart(
      stream.losses.map(({ on, cells, setAside, stage }) => ({ x: x(on), y: underBand, cells, setAside, stage })),
    ),
    wedge: {
      from: x(stream.emergence.earliest),
      middle: x(stream.emergence.expected),
      to: x(stream.emergence.latest) + dayWidth,
    },
    threads: layOutThreads(stream, x, middle, thicknessOf(stream.threads.length), width),
    days: layOutDays(from, days, dayWidth, x),
    dayWidth,
    todayX,
  };
}

/** Half the room the words over a span and over today need, in pixels. */
const WORDS_ROOM = 80;
/** Room the words of a loss need. */
const LOSS_ROOM = 90;

function labelOver(
  gate: { readonly x: number; readonly width: number },
  todayX: number | null,
): StreamLayout['gates'][number]['label'] {
  const middle = gate.x + gate.width / 2;
  if (todayX === null || Math.abs(todayX - middle) > WORDS_ROOM) return { x: middle, anchor: 'middle' };
  return todayX <= middle
    ? { x: Math.max(middle, todayX + WORDS_ROOM / 2), anchor: 'start' }
    : { x: Math.min(middle, todayX - WORDS_ROOM / 2), anchor: 'end' };
}

type Loss = Omit<StreamLayout['losses'][number], 'anchor'>;

const turnedApart = (losses: readonly Loss[]): StreamLayout['losses'] =>
  losses.map((loss, index) => {
    const next = losses[index + 1];
    return { ...loss, anchor: next && next.x - loss.x < LOSS_ROOM ? 'end' : 'start' };
  });

function layOutDays(from: Day, days: number, dayWidth: number, x: (day: Day) => number): StreamLayout['days'] {
  const every = Math.max(1, Math.ceil(READABLE_DAY / dayWidth));
  return Array.from({ length: days + 1 }, (_, index) => {
    const on = addDays(from, index);
    return { x: x(on), on: isoOfDay(on), labelled: index % every === 0 && index < days };
  });
}

/** At the split the band frays into one thread per box, spread over the band's thickness. */
function layOutThreads(
  stream: StreamPicture,
  x: (day: IsoDay) => number,
  middle: number,
  thickness: number,
  width: number,
): StreamLayout['threads'] {
  const count = stream.threads.length;
  return stream.threads.map((thread, index) => ({
    box: thread.box,
    x: x(thread.from),
    y: middle - thickness / 2 + ((index + 0.5) / count) * thickness,
    endX: width - EDGE,
    result: thread.result,
  }));
}
