import type { LookResult } from '../../model/look.ts';

interface LookWord {
  /** In the grid and on the yard sheet. */
  readonly name: string;
  /** Said in full, for help and the key card. */
  readonly line: string;
}

export const lookWords = {
  laying: { name: 'laying', line: 'Eggs or young brood of a new queen.' },
  proved: { name: 'proved', line: 'Sealed worker brood: she is mated and lays well.' },
  virgin: { name: 'virgin', line: 'A queen was seen, not laying and still slim.' },
  cell: { name: 'cell not out', line: 'The cell is still closed.' },
  none: { name: 'no queen', line: 'No queen and no eggs.' },
  'drone-layer': { name: 'drone-layer', line: 'Drone brood in worker cells.' },
  gone: { name: 'box empty', line: 'The bees have left, or the box was robbed.' },
  queen: { name: 'queen, no eggs', line: 'A queen was seen that could be mated; no eggs yet.' },
  out: { name: 'out', line: 'The cell is open at the tip with a hinged lid: she is out.' },
  'cell-failed': { name: 'cell failed', line: 'The cell is dead, or torn open at its side.' },
  'not-looked': { name: 'not looked', line: 'Not opened. Counts neither for nor against.' },
} as const satisfies Record<LookResult, LookWord>;
