import type { LossReason, LossStage } from '../../model/loss.ts';

/** Where cells and queens of a batch were lost, and why. */
export const losses = {
  title: 'Losses',
  line: 'Say why, where you know it; what has no reason stays unknown.',
  seasonTitle: 'Why cells and queens were lost',
  seasonLine:
    'Only what somebody said on the page of a batch, and the drone-layers that were seen. Losses without a reason are left as they are, not shared out.',
  columns: { stage: 'Stage', lost: 'Lost', known: 'With a reason', reasons: 'Reasons' },
  stages: {
    taken: 'not taken',
    sealed: 'not sealed',
    emerged: 'not emerged',
    proved: 'emerged but not proved',
  } satisfies Record<LossStage, string>,
  reasons: {
    'builder-not-ready': 'builder not ready',
    'larvae-harmed': 'larvae harmed or dried out',
    drowned: 'drowned or wet',
    chilled: 'chilled',
    starved: 'starved',
    'torn-down': 'torn down by a virgin or the bees',
    'dead-in-cell': 'dead in the cell',
    damaged: 'knocked or dented',
    'mating-flight': 'lost on the mating flight',
    killed: 'killed by the bees',
    absconded: 'left with the bees',
    robbed: 'robbed, or wasps',
    other: 'another reason',
  } satisfies Record<LossReason, string>,
  droneLayers: 'drone-layer',
  count: (reason: string, n: number) => `${reason} ${n}`,
  lostOf: (lost: number, of: number) => `${lost} of ${of}`,
  unknown: (n: number) => `reason not known ${n}`,
  known: (known: number, lost: number) => `${known} of ${lost}`,
  none: 'no reason said',
  tooMany: (n: number) =>
    `${n === 1 ? '1 reason is' : `${n} reasons are`} more than was lost, since a count was corrected. Correct the reasons.`,
  stage: 'At which stage',
  reason: 'Why',
  cells: 'How many',
  cellsHint: 'The same reason again corrects it; 0 takes it back.',
  save: 'Save the reason',
} as const;
