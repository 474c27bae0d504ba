import { z } from 'zod';
import type { IsoDay } from '../kernel/day.ts';
import { ColonyMove, Treatment } from '../model/hive-record.ts';
import { type Kinship, StockScore, StockTest, type StockTrait } from '../model/stock.ts';
import type { Notice } from './refusal.ts';

export const RecordScore = StockScore;
export const RecordTest = StockTest;
export const RecordTreatment = Treatment;
/** The yard it leaves is known; the new one may be null where it is not said. */
export const MoveHive = ColonyMove.omit({ fromYardId: true });
/** How many seasons back scores and tests are taken into account, the present one included. */
export const ListStock = z.object({ seasons: z.int().min(1).max(20) });

/** A figure with the number of scores behind it; `enough` by the rule of its trait. */
export interface TraitFigure {
  readonly n: number;
  readonly value: number | null;
  readonly enough: boolean;
}

export interface TestLine extends StockTest {
  /** Share cleared, mites per 100 bees or a day, kilograms. */
  readonly figure: number | null;
}

export interface HiveMoveLine extends ColonyMove {
  readonly from: string | null;
  readonly to: string | null;
}

/** What was written down about one hive as stock; each list newest first. */
export interface HiveRecords {
  readonly scores: readonly StockScore[];
  readonly summary: Readonly<Record<StockTrait, TraitFigure>>;
  readonly tests: readonly TestLine[];
  readonly strictlyHygienic: boolean | null;
  readonly treatments: readonly Treatment[];
  readonly moves: readonly HiveMoveLine[];
  readonly queens: readonly {
    readonly id: string;
    readonly number: string;
    readonly from: IsoDay;
    readonly until: IsoDay | null;
  }[];
}

/** One hive in the table from which a breeder is chosen. */
export interface StockLine {
  readonly id: string;
  readonly code: string;
  readonly name: string | null;
  readonly yard: string | null;
  readonly motherLine: string | null;
  readonly breeder: boolean;
  readonly queen: { readonly id: string; readonly number: string; readonly bornIn: number } | null;
  /** This season's drone mothers that are known to be her kin. */
  readonly kin: readonly { readonly code: string; readonly how: Kinship }[];
  readonly traits: Readonly<Record<StockTrait, TraitFigure>>;
  /** Mean share cleared over pin tests. */
  readonly pin: TraitFigure;
  readonly strictlyHygienic: boolean | null;
  /** Mean mites per 100 bees over the washes. */
  readonly mites: TraitFigure;
  readonly honey: {
    readonly season: number;
    readonly kilograms: number;
    readonly mean: number;
    readonly colonies: number;
    readonly enough: boolean;
  } | null;
}

export interface HiveMoved {
  readonly move: ColonyMove;
  readonly notices: readonly Notice[];
}

export type StockRefusal =
  | { readonly kind: 'out-of-needed'; readonly field: 'outOf' }
  | {
      readonly kind: 'more-cleared-than-tested';
      readonly field: 'counted';
      readonly counted: number;
      readonly outOf: number;
    }
  | { readonly kind: 'treatment-turned-round'; readonly field: 'toOn'; readonly fromOn: IsoDay };
