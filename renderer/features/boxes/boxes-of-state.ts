import type { BoxLine, BoxStateKind } from '../../../shared/contract/boxes.ts';

/** The columns of the board, from an empty box to a proved queen, then what failed. Boxes out of use are not on it. */
export const BOARD_STATES: readonly BoxStateKind[] = ['free', 'cell', 'virgin', 'laying', 'proved', 'failed'];

export interface BoardColumn {
  readonly state: BoxStateKind;
  readonly boxes: readonly BoxLine[];
}

/** One line of the board by place: the name of a yard or of a row in it, or as many tiles as stand side by side. */
export type PlaceLine =
  | { readonly kind: 'yard' | 'row'; readonly yard: string; readonly name: string }
  | { readonly kind: 'tiles'; readonly boxes: readonly BoxLine[] };

/** Boxes as they stand, cut into lines of so many tiles. */
export function placeLines(
  boxes: readonly BoxLine[],
  across: number,
  nameless: { readonly yard: string; readonly row: string },
): readonly PlaceLine[] {
  return [...Map.groupBy(boxes, (box) => box.yard ?? nameless.yard)].flatMap(([yard, ofYard]): readonly PlaceLine[] => [
    { kind: 'yard', yard, name: yard },
    ...[...Map.groupBy(ofYard, (box) => box.row ?? nameless.row)].flatMap(([row, ofRow]): readonly PlaceLine[] => [
      { kind: 'row', yard, name: row },
      ...Array.from({ length: Math.ceil(ofRow.length / across) }, (_, line) => ({
        kind: 'tiles' as const,
        boxes: ofRow.slice(line * across, (line + 1) * across),
      })),
    ]),
  ]);
}

/** Boxes by state, each column in walking order. Every column is there, also an empty one, so that the board stands still. */
export const boardColumns = (boxes: readonly BoxLine[]): readonly BoardColumn[] =>
  BOARD_STATES.map((state) => ({ state, boxes: boxes.filter((box) => box.state === state) }));
