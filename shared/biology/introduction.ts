import type { IntroductionWay } from '../model/queen-story.ts';
import type { Fact } from './fact.ts';
import { BEEBOOK_INTRODUCTION, BEEBOOK_TESTING, CUSTOM } from './sources.ts';

type DayFact = Fact & { readonly range: readonly [number, number] };

const release = (value: number, range: readonly [number, number]): DayFact => ({
  value,
  unit: 'days',
  range,
  source: `${BEEBOOK_INTRODUCTION}; the days are ${CUSTOM}`,
  confidence: 'medium',
});

/** Days from bringing a queen to a hive until her cage is looked at; null where she is not caged in it. */
export const RELEASE_DAYS: Readonly<Record<IntroductionWay, DayFact | null>> = {
  'candy-cage': release(3, [3, 5]),
  'push-in-cage': release(5, [3, 7]),
  'small-colony': null,
  direct: null,
  other: null,
};

export const INTRODUCTION_CHECKS = {
  /** Days from bringing her in until eggs are looked for; the hive is left alone before. */
  eggs: { value: 7, unit: 'days', range: [7, 10], source: CUSTOM, confidence: 'medium' },
  /** Days from bringing her in until it is seen whether she stayed; her own bees are out by then. */
  stayed: { value: 28, unit: 'days', range: [28, 42], source: BEEBOOK_TESTING, confidence: 'medium' },
  /** Least days from the last look at the cage to the look for eggs. */
  quietAfterRelease: { value: 2, unit: 'days', range: null, source: CUSTOM, confidence: 'low' },
  /** Days until a check that gave no clear answer is done again. */
  again: { value: 4, unit: 'days', range: [2, 5], source: CUSTOM, confidence: 'low' },
} as const satisfies Record<string, Fact>;
