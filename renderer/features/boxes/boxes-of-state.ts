import type { BoxLine, BoxStateKind } from '../../../shared/contract/boxes.ts';

/** The columns of the board, from an empty box to a proved queen, then what failed. Boxes out of use are not on it. */
export const BOARD_STATES: readonly BoxStateKind[] = ['free', 'cell', 'virgin', 'laying', 'proved', 'failed'];

export interface BoardColumn {
  readonly state: BoxStateKind;
  readonly boxes: readonly BoxLine[];
}

/** Boxes by state, each column in walking order. Every column is there, also an empty one, so that the board stands still. */
export const boardColumns = (boxes: readonly BoxLine[]): readonly BoardColumn[] =>
  BOARD_STATES.map((state) => ({ state, boxes: boxes.filter((box) => box.state === state) }));
