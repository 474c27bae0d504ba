import type { Fact } from './fact.ts';
import { DEVELOPMENT_RANGES, EMERGENCY_STUDY, OLD_LARVA_NOTE, SEALED_STAGE_WARMTH, SEALING_DAYS } from './sources.ts';

/**
 * How long bees take, in hours since the egg was laid (elapsed time, never "day 1").
 * Many printed tables count inclusively; a "sealed day 9" is 8 days here.
 */
export const CASTES = ['queen', 'worker', 'drone'] as const;
export type Caste = (typeof CASTES)[number];

type RangedFact = Fact & { readonly range: readonly [number, number] };

export interface DevelopmentRow {
  readonly hatches: RangedFact;
  readonly sealed: RangedFact;
  readonly emerges: RangedFact;
}

/** A figure printed in days, with its range, turned into hours. */
const days = (value: number, range: readonly [number, number], source: string): RangedFact => ({
  value: value * 24,
  unit: 'hours',
  range: [range[0] * 24, range[1] * 24],
  source,
  confidence: 'high',
});

export const DEVELOPMENT = {
  queen: {
    hatches: days(3, [2.75, 3.5], DEVELOPMENT_RANGES),
    sealed: days(8, [7.5, 8.5], SEALING_DAYS),
    // 16 days 1 hour at 34.5 °C; 15 to 17 days in all sources together.
    emerges: { value: 385, unit: 'hours', range: [360, 408], source: SEALED_STAGE_WARMTH, confidence: 'high' },
  },
  worker: {
    hatches: days(3, [2.75, 3.5], DEVELOPMENT_RANGES),
    sealed: days(9, [8.5, 9], SEALING_DAYS),
    emerges: days(21, [19, 22], DEVELOPMENT_RANGES),
  },
  drone: {
    hatches: days(3, [2.75, 3.5], DEVELOPMENT_RANGES),
    sealed: days(9.5, [9.5, 10], SEALING_DAYS),
    emerges: days(24, [24, 25], DEVELOPMENT_RANGES),
  },
} as const satisfies Record<Caste, DevelopmentRow>;

/** Warmth of sealed queen cells at which the hours above hold. */
export const USUAL_CELSIUS: Fact = {
  value: 34.5,
  unit: 'celsius',
  range: [33, 36],
  source: SEALED_STAGE_WARMTH,
  confidence: 'high',
};

/**
 * Hours by which emergence is later for each degree below 34.5 °C while sealed: 27 hours for 2.5 degrees in the 2015
 * study, so 10.8. A straight line between the two measured points; not to be trusted below 31 °C.
 */
export const HOURS_PER_DEGREE: Fact = {
  value: 27 / 2.5,
  unit: 'hours',
  range: null,
  source: SEALED_STAGE_WARMTH,
  confidence: 'medium',
};
export const SEALED_CELSIUS_LIMITS = { least: 31, most: 37 } as const;

/** A colony may keep its cells one degree below the usual warmth; the latest emergence is reckoned with that. */
export const COOL_HIVE_HOURS = HOURS_PER_DEGREE.value;

/** Cells must be in their boxes this long before the earliest plausible emergence. */
export const SAFETY_HOURS: Fact = {
  value: 12,
  unit: 'hours',
  range: null,
  source: OLD_LARVA_NOTE,
  confidence: 'medium',
};

/** The larva that quality and every practical table suppose, hours since hatching. */
export const TARGET_LARVA_HOURS = { youngest: 12, oldest: 24 } as const;

/** Older than this no larva becomes a queen. */
export const MOST_LARVA_HOURS = 96;

/**
 * Which eggs and larvae a colony without a queen may turn to, as hours laid before the loss. Of the larvae used, 65 in
 * 100 were under 2 days old and 10 in 100 were 4 days old; an egg laid in the last hour may serve too.
 */
export const EMERGENCY_LARVAE = {
  oldestLaidHoursBefore: 144,
  typicalLaidHoursBefore: 96,
  youngestLaidHoursBefore: 0,
  source: EMERGENCY_STUDY,
} as const;
