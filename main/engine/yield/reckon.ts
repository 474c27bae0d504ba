import { type Allowed, allowFor } from './allow-for.ts';
import type { CountSummary } from './count-summary.ts';
import type { CrossedBatch } from './crossed-mode.ts';
import { type ExpectAsk, expectBatch } from './expect-batch.ts';
import type { BatchCount } from './group-rates.ts';
import { moreBatchesToSettle } from './more-batches.ts';
import {
  type Belief,
  believe,
  type CountedStageGroups,
  type PlannedQueens,
  type PlanQueensAsk,
  planQueens,
} from './plan-queens.ts';
import { type WeighedGroups, weighGroups } from './weigh-groups.ts';

type CountedGroups = Pick<CountedStageGroups, 'groups' | 'group'>;
type Groups = readonly (readonly BatchCount[])[];

/** The questions that take a while to answer. All of them, and their answers, are plain data, so they can travel. */
export interface YieldQuestions {
  /** Groups against each other at one stage. */
  readonly weigh: {
    readonly ask: {
      readonly groups: Groups /** How many next batches of the best to look ahead. */;
      readonly ahead?: number;
    };
    readonly answer: WeighedGroups;
  };
  /** How many more batches would settle which of two is better. */
  readonly settle: {
    readonly ask: { readonly groups: Groups; readonly first: number; readonly second: number };
    readonly answer: number | null;
  };
  /** Two levels of one factor allowing for another. */
  readonly allow: {
    readonly ask: {
      readonly batches: readonly CrossedBatch[];
      readonly levels: readonly [number, number];
      readonly first: number;
      readonly second: number;
    };
    readonly answer: Allowed;
  };
  /** What should come out of the stages ahead of a batch. */
  readonly expect: { readonly ask: ExpectAsk; readonly answer: CountSummary };
  readonly plan: { readonly ask: PlanQueensAsk; readonly answer: PlannedQueens };
}

export type YieldKind = keyof YieldQuestions;

/** Answers the questions, at once or after a while. */
export type Reckoner = <Kind extends YieldKind>(
  kind: Kind,
  ask: YieldQuestions[Kind]['ask'],
) => Promise<YieldQuestions[Kind]['answer']>;

type Answers = { readonly [Kind in YieldKind]: (ask: YieldQuestions[Kind]['ask']) => YieldQuestions[Kind]['answer'] };

/** Beliefs kept at a time; each is some thousand numbers. */
const KEPT = 40;

/** A reckoner that answers in its own thread of work. Same questions, same answers: it keeps beliefs, nothing else. */
export function startReckoning(): <Kind extends YieldKind>(
  kind: Kind,
  ask: YieldQuestions[Kind]['ask'],
) => YieldQuestions[Kind]['answer'] {
  const known = new Map<string, Belief>();
  const beliefOf = ({ groups, group }: CountedGroups): Belief => {
    const key = JSON.stringify([groups, group]);
    const belief = known.get(key) ?? believe({ groups, group });
    known.delete(key);
    known.set(key, belief);
    const oldest = known.size > KEPT ? known.keys().next().value : undefined;
    if (oldest !== undefined) known.delete(oldest);
    return belief;
  };
  const answers: Answers = {
    weigh: ({ groups, ahead }) => weighGroups(groups, ahead),
    settle: ({ groups, first, second }) => moreBatchesToSettle(groups, first, second),
    allow: ({ batches, levels, first, second }) => allowFor(batches, levels, first, second),
    expect: (ask) => expectBatch(ask, beliefOf),
    plan: (ask) => planQueens(ask, beliefOf),
  };
  return (kind, ask) => answers[kind](ask);
}

/** For where nobody waits: tests, and the demo being built. */
export function reckonHere(): Reckoner {
  const answer = startReckoning();
  return (kind, ask) => Promise.resolve(answer(kind, ask));
}
