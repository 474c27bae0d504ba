/** A cell in a box, or a queen still in the box that her cell was put in. */
export interface BoxedCell {
  /** Code of the hive the larva came from; null = not said. */
  readonly mother: string | null;
  /** Null = the box stands in no named yard. */
  readonly yard: string | null;
}

export interface YardSpread {
  readonly yard: string | null;
  readonly freeBoxes: number;
  /** How many boxes of the yard hold cells or queens of each mother, most first. */
  readonly mothers: readonly { readonly mother: string | null; readonly cells: number }[];
}

export interface CellSpread {
  readonly yards: readonly YardSpread[];
  /** The one yard in which all boxes of this mother stand, where boxes stand in another yard too; null = spread, or none. */
  readonly allIn: string | null;
}

/**
 * Where the cells of each mother stand, yard by yard, with the boxes still free there. All of one mother in one yard can
 * be lost together (common practice, no source).
 * @param mother the one whose cells are to be put in boxes.
 * @param free yard of each free box.
 */
export function cellSpread(
  mother: string | null,
  cells: readonly BoxedCell[],
  free: readonly (string | null)[],
): CellSpread {
  const names = [...new Set([...cells.map(({ yard }) => yard), ...free])].toSorted(byName);
  const own = new Set(cells.filter((cell) => mother !== null && cell.mother === mother).map(({ yard }) => yard));
  const [onlyYard = null] = own;
  return {
    yards: names.map((yard) => ({
      yard,
      freeBoxes: free.filter((one) => one === yard).length,
      mothers: mothersOf(cells.filter((cell) => cell.yard === yard)),
    })),
    allIn: own.size === 1 && names.length > 1 ? onlyYard : null,
  };
}

function mothersOf(cells: readonly BoxedCell[]): YardSpread['mothers'] {
  const counted = new Map<string | null, number>();
  for (const { mother } of cells) counted.set(mother, (counted.get(mother) ?? 0) + 1);
  return [...counted]
    .map(([mother, count]) => ({ mother, cells: count }))
    .toSorted((a, b) => b.cells - a.cells || byName(a.mother, b.mother));
}

/** What is not named comes last. */
function byName(a: string | null, b: string | null): number {
  if (a === null || b === null) return Number(a === null) - Number(b === null);
  return a < b ? -1 : Number(a > b);
}

/** Of a hundred sealed cells so many are kept in hand for boxes that fail; common practice, no source. */
const SPARE_PERCENT = { from: 10, to: 20 } as const;

/** How many of the sealed cells to keep in hand; null where they were not counted or there are none. */
export function spareCells(sealed: number | null): { readonly from: number; readonly to: number } | null {
  if (sealed === null || sealed <= 0) return null;
  const share = (percent: number) => Math.ceil((sealed * percent) / 100);
  return { from: share(SPARE_PERCENT.from), to: share(SPARE_PERCENT.to) };
}
