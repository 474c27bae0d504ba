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
  readonly gates: readonly { readonly x: number; readonly width: number; readonly step: string }[];
  readonly flags: readonly { readonly x: number; readonly step: string; readonly done: boolean }[];
  readonly losses: readonly {
    readonly x: number;
    readonly y: number;
    readonly cells: number;
    readonly setAside: number;
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
  return {
    width,
    height,
    middle,
    fullThickness,
    bands,
    gates: stream.gates.map((gate) => ({
      x: x(gate.from),
      width: (dayOfIso(gate.to) - dayOfIso(gate.from) + 1) * dayWidth,
      step: gate.step,
    })),
    flags: stream.flags.map((flag) => ({ x: x(flag.on), step: flag.step, done: flag.done })),
    losses: stream.losses.map(({ on, cells, setAside }) => ({ x: x(on), y: underBand, cells, setAside })),
    wedge: {
      from: x(stream.emergence.earliest),
      middle: x(stream.emergence.expected),
      to: x(stream.emergence.latest) + dayWidth,
    },
    threads: layOutThreads(stream, x, middle, thicknessOf(stream.threads.length), width),
    days: layOutDays(from, days, dayWidth, x),
    dayWidth,
    todayX: today >= from && today <= from + days ? x(today) : null,
  };
}

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
