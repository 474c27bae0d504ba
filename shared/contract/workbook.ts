import { z } from 'zod';
import type { Language } from '../kernel/language.ts';
import { NameField } from '../model/fields.ts';
import type { Harm, SafetyCopy } from './copies.ts';
import type { Refusal } from './refusal.ts';
import { Settings } from './settings.ts';

export const BeginWorkbook = z.object({
  name: NameField,
  /** Folder to put the file in; null = the usual place, which the page has shown. */
  folder: z.string().min(1).max(4096).nullable(),
  /** How days and amounts are written, as guessed from the computer and seen by the person. */
  habits: Settings.pick({ dateOrder: true, weekStart: true, temperature: true, measures: true }).optional(),
});
export type Habits = NonNullable<z.infer<typeof BeginWorkbook>['habits']>;
export const SaveElsewhere = z.object({ folder: z.string().trim().min(1).max(4096) });
export const PackWorkbook = z.object({ folder: z.string().trim().min(1).max(4096).nullable() });
export const OpenWorkbook = z.object({ file: z.string().min(1).max(4096) });

/** A package for another computer, and how many safety copies are in it. */
export interface Packed {
  readonly file: string;
  readonly bytes: number;
  readonly copies: number;
}

export interface WorkbookRef {
  readonly name: string;
  readonly file: string;
}

/**
 * Why a workbook can only be read: it is a safety copy one looks into; it was made by a newer version of the program;
 * it is of an older format, in a place where it cannot be brought up to date; the file or its folder may not be
 * written; the file has a second name in another folder; or another window or program is writing in it.
 */
export type ReadOnlyReason = 'copy' | 'newer' | 'older' | 'place' | 'two-names' | 'open-elsewhere';

/** A place in which a workbook can come to harm through no fault of the program. */
export interface RiskyPlace {
  readonly kind: 'synced' | 'network';
  /** The folder or file system it was told by. */
  readonly sign: string;
}

/** Somebody's own; the invented yard to look at; or the one to practise in, which can be set back to its start. */
export type WorkbookKind = 'real' | 'demo' | 'practice';

/** What the page must know before it shows anything else. */
export interface WorkbookState {
  readonly open:
    | (WorkbookRef & {
        readonly kind: WorkbookKind;
        readonly readOnly: boolean;
        readonly readOnlyBecause: ReadOnlyReason | null;
        readonly riskyPlace: RiskyPlace | null;
        readonly harm: Harm | null;
        /** The safety copy that is being looked at; null in the workbook itself. */
        readonly lookingAt: SafetyCopy | null;
        /** The day the workbook reckons with: today, or the day an invented one is held at. */
        readonly today: string;
        readonly season: number;
        readonly savedAt: string | null;
      })
    | null;
  /** A workbook that was in use and is not where it was: said plainly, never replaced by a blank one. */
  readonly missing: WorkbookRef | null;
  /** A workbook that is there and could not be opened, and why. */
  readonly notOpened: (WorkbookRef & { readonly refusal: Refusal }) | null;
  readonly recent: readonly (WorkbookRef & { readonly found: boolean })[];
  readonly usualFolder: string;
  readonly version: string;
  /** The language of the computer, for a person who chose none. */
  readonly computerLanguage: Language;
}

export type WorkbookRefusal =
  | { readonly kind: 'file-not-found'; readonly field: 'file'; readonly file: string }
  | { readonly kind: 'file-not-readable'; readonly field: 'file'; readonly file: string }
  | {
      readonly kind: 'drive-refused';
      readonly field: 'file';
      readonly file: string;
      readonly reason: 'disk-full' | 'drive-error';
    }
  | { readonly kind: 'folder-not-found'; readonly field: 'folder'; readonly folder: string }
  | { readonly kind: 'file-exists'; readonly field: 'name'; readonly file: string }
  | { readonly kind: 'not-a-workbook'; readonly field: 'file'; readonly file: string }
  | { readonly kind: 'workbook-newer'; readonly field: 'file'; readonly file: string; readonly version: number }
  | { readonly kind: 'package-broken'; readonly field: 'file'; readonly file: string }
  | { readonly kind: 'workbook-damaged'; readonly field: 'file'; readonly file: string }
  | { readonly kind: 'workbook-open-elsewhere'; readonly field: 'file'; readonly file: string }
  | { readonly kind: 'not-practice' }
  | { readonly kind: 'place-not-writable'; readonly field: 'folder'; readonly folder: string };
