import type { Remedy } from '../../biology/remedies.ts';

/** What may help, as a friend at the next hive would say it. */
export const REMEDY_WORDS = {
  'feed-or-wait-for-flow': 'Feed thin syrup each evening, or wait for nectar to come in.',
  'move-hive-to-shed-foragers':
    'Move the hive a few steps aside on a flying day: the foragers go elsewhere, and the nectar in the comb is eaten.',
  'give-another-comb': 'Hang another empty comb in the middle of the brood nest.',
  'start-over': 'Start over with a fresh comb, as a new batch; this one stays in the book with its reason.',
  'give-new-larvae-as-new-batch': 'Give new larvae in the empty cups, as a new batch with its own number.',
  'use-larvae-today': 'Give the larvae today.',
  'wait-a-day': 'Wait a day and look again.',
  'move-cells-earlier': 'Move the cells earlier: the timetable shows the last safe day.',
  'cage-cells-now': 'Cage or share out the other cells now, before the first queen finds them.',
  'look-for-hidden-queen': 'Look for a queen or virgin hidden in the builder.',
  'destroy-own-cells': 'Destroy the builder’s own cells on every comb, bees brushed off.',
  'add-bees-and-cover': 'Add young bees, and cover the hive against cold.',
} as const satisfies Record<Remedy, string>;
