/** Boxes as they are shown, line by line: rows that run across the window, or columns that run down it. */
export interface BoxWalk {
  readonly run: 'across' | 'down';
  readonly lines: readonly (readonly string[])[];
}

const ALONG: Readonly<Record<BoxWalk['run'], Readonly<Record<string, number>>>> = {
  across: { ArrowLeft: -1, ArrowRight: 1 },
  down: { ArrowUp: -1, ArrowDown: 1 },
};
const ACROSS: Readonly<Record<BoxWalk['run'], Readonly<Record<string, number>>>> = {
  across: { ArrowUp: -1, ArrowDown: 1 },
  down: { ArrowLeft: -1, ArrowRight: 1 },
};

/**
 * The box an arrow key leads to from `id`; null at the edge, or for another key. Along a line it goes on into the next
 * one only where lines are rows, as one reads; a shorter line is entered at its end.
 */
export function neighbourOf({ run, lines }: BoxWalk, id: string, key: string): string | null {
  const filled = lines.filter((line) => line.length > 0);
  const line = filled.findIndex((one) => one.includes(id));
  const place = filled[line]?.indexOf(id) ?? -1;
  if (place < 0) return null;
  const along = ALONG[run][key];
  if (along !== undefined) {
    if (run === 'down') return filled[line]?.[place + along] ?? null;
    const order = filled.flat();
    return order[order.indexOf(id) + along] ?? null;
  }
  const next = filled[line + (ACROSS[run][key] ?? Number.NaN)];
  return next?.[Math.min(place, next.length - 1)] ?? null;
}

/** Every box from one to the other, both included, in the order they are shown. */
export function boxesBetween({ lines }: BoxWalk, from: string, to: string): readonly string[] {
  const order = lines.flat();
  const ends = [order.indexOf(from), order.indexOf(to)];
  return ends.includes(-1) ? [] : order.slice(Math.min(...ends), Math.max(...ends) + 1);
}
