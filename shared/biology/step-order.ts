import type { Step } from '../model/step.ts';

/** The milestones of a batch in the order in which they can happen; the same day is allowed. */
const MILESTONES: readonly Step[] = [
  'insert-frame',
  'cage-queen',
  'first-transfer',
  'give-larvae',
  'count-taken',
  'count-sealed',
  'place-cells',
  'emergence-check',
  'first-look',
  'sealed-brood-look',
  'give-up',
];

const SIDE_ORDERS: readonly (readonly [Step, Step])[] = [
  ['cage-queen', 'release-queen'],
  ['release-queen', 'give-larvae'],
  ['give-larvae', 'move-to-finisher'],
  ['give-larvae', 'open-divider'],
  ['give-larvae', 'check-own-cells'],
  ['remove-queen', 'thin-cells'],
  ['remove-queen', 'place-cells'],
  ['sealed', 'place-cells'],
  ['sealed', 'emergence'],
  ['give-larvae', 'emergence'],
  ['emergence', 'first-look'],
];

/** Pairs: the second cannot come before the first. */
export const STEPS_IN_ORDER: readonly (readonly [Step, Step])[] = [
  ...MILESTONES.flatMap((before, index) =>
    MILESTONES.slice(index + 1).map((after): readonly [Step, Step] => [before, after]),
  ),
  ...SIDE_ORDERS,
];
