import { z } from 'zod';
import type { IsoDay } from '../kernel/day.ts';
import { Colony, ROLES, type Role } from '../model/colony.ts';
import { IdField, IsoDayField, SeasonField } from '../model/fields.ts';
import { HiveLook } from '../model/look.ts';
import { Yard } from '../model/yard.ts';
import type { BatchLine } from './batches.ts';
import type { RateFigure } from './season.ts';

export const SaveYard = Yard;
export const SaveHive = Colony;
export const SetRoles = z.object({
  colonyId: IdField,
  season: SeasonField,
  roles: z.array(z.enum(ROLES)).max(4),
  ids: z.array(IdField).max(4),
});
export const RecordHiveLook = HiveLook;
export const RemoveHiveLook = z.object({ lookId: IdField });
/** The rows of an evening's typing: the hives of one yard, or all when it is null. */
export const HiveLookSheet = z.object({ yardId: IdField.nullable(), sheetDay: IsoDayField });
export const HiveId = z.object({ colonyId: IdField });

export interface HiveLine {
  readonly id: string;
  readonly code: string;
  readonly name: string | null;
  readonly yardId: string | null;
  readonly yard: string | null;
  readonly place: string | null;
  readonly motherLine: string | null;
  readonly roles: readonly Role[];
  readonly ended: boolean;
  /** The hive must not be opened until this day, and for which batch. */
  readonly handsOff: { readonly until: IsoDay; readonly batch: string; readonly step: string } | null;
  /** A queen was just brought in, and the hive is left alone until this day. */
  readonly newQueen: { readonly until: IsoDay; readonly queen: string } | null;
  readonly batchesFed: number;
  readonly batchesMothered: number;
}

export interface SeasonFigures {
  readonly season: number;
  readonly batches: number;
  readonly take: RateFigure | null;
  readonly mating: RateFigure | null;
}

/** Kin of a hive by the queens that head it and others today, as far as the register says. */
export interface HiveRelatives {
  readonly queen: { readonly id: string; readonly number: string } | null;
  /** The mother of its queen: a queen with a number, or the hive the larva came from. */
  readonly mother: { readonly kind: 'queen' | 'hive'; readonly id: string; readonly name: string } | null;
  readonly hives: readonly {
    readonly id: string;
    readonly code: string;
    readonly name: string | null;
    readonly how: HiveRelation;
  }[];
}
export const HIVE_RELATIONS = ['mother', 'sister', 'daughter', 'same-line'] as const;
export type HiveRelation = (typeof HIVE_RELATIONS)[number];

export interface HiveDetail extends HiveLine {
  readonly colony: Colony;
  readonly rolesBySeason: readonly { readonly season: number; readonly roles: readonly Role[] }[];
  readonly asBuilder: readonly SeasonFigures[];
  readonly asBreeder: readonly SeasonFigures[];
  readonly batches: readonly BatchLine[];
  readonly looks: readonly HiveLook[];
  /** The days of the past week and the coming four, and what lies on them. */
  readonly dayLine: readonly {
    readonly on: IsoDay;
    /** The batch because of which the hive is left alone. */
    readonly handsOff: string | null;
    /** The queen because of whom it is. */
    readonly newQueen: string | null;
    readonly jobs: readonly string[];
    readonly looked: boolean;
    readonly fed: boolean;
  }[];
  readonly relatives: HiveRelatives;
  readonly freeFrom: IsoDay | null;
}

export interface HiveList {
  readonly hives: readonly HiveLine[];
  readonly yards: readonly Yard[];
}

export interface HiveLookRow
  extends Pick<HiveLine, 'id' | 'code' | 'name' | 'yard' | 'place' | 'handsOff' | 'newQueen'> {
  /** The look before the sheet day. */
  readonly last: HiveLook | null;
  readonly typed: HiveLook | null;
}

export interface HiveLookSheetView {
  readonly sheetDay: IsoDay;
  readonly rows: readonly HiveLookRow[];
}

export type HivesRefusal =
  | { readonly kind: 'hive-code-in-use'; readonly field: 'code'; readonly code: string }
  | { readonly kind: 'yard-name-in-use'; readonly field: 'name'; readonly name: string }
  | { readonly kind: 'yard-not-found'; readonly field: 'yardId' }
  | { readonly kind: 'hive-missing'; readonly field: 'colonyId' };
