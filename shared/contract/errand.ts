import { z } from 'zod';
import type { IsoDay } from '../kernel/day.ts';
import { IdField } from '../model/fields.ts';
import type { LookResult } from '../model/look.ts';
import type { MadeFile } from './files.ts';
import { ImportedFile } from './import.ts';

/** Boxes handed to someone else for their looks, by their codes as typed. */
export const MakeErrand = z.object({ boxes: z.string().trim().min(1).max(400) });

export interface ErrandMade extends MadeFile {
  readonly boxes: readonly string[];
}

export const PreviewErrand = z.object({ file: ImportedFile });

/** Which of two looks at one box on one day is to stand, where they differ. */
export const TakeErrand = PreviewErrand.extend({
  choices: z.record(IdField, z.enum(['mine', 'theirs'])),
});

export interface LookSeen {
  readonly result: LookResult;
  readonly strength: number | null;
  readonly food: number | null;
  readonly note: string | null;
  readonly queen: string | null;
}

/** One look of the errand. `same` was taken in before or went out with it; `doubtful` asks for a choice. */
export interface ErrandLook {
  readonly lookId: string;
  readonly box: string;
  readonly on: IsoDay;
  readonly standing: 'new' | 'same' | 'doubtful' | 'no-such-box' | 'number-taken';
  readonly theirs: LookSeen;
  readonly mine: LookSeen | null;
}

export interface ErrandPreview {
  readonly from: string;
  readonly madeOn: IsoDay;
  /** All but the looks that are the same. */
  readonly looks: readonly ErrandLook[];
  readonly same: number;
}

export interface ErrandTaken {
  readonly added: number;
  readonly changed: number;
  readonly kept: number;
}

export type ErrandRefusal =
  | {
      readonly kind: 'errand-unreadable';
      readonly field: 'file';
      readonly reason: 'not-an-errand' | 'other-version' | 'damaged';
    }
  | { readonly kind: 'errand-not-decided'; readonly field: 'choices'; readonly box: string; readonly on: IsoDay }
  | { readonly kind: 'no-box-for-errand'; readonly field: 'boxes' };
