import { z } from 'zod';
import type { WorkbookRef } from './workbook.ts';

/** Why a safety copy was made. */
export const CopyPurpose = z.enum(['by-hand', 'timer', 'close', 'before-format', 'before-import', 'before-restore']);
export type CopyPurpose = z.infer<typeof CopyPurpose>;

/** How many records of each kind; null where a copy is so old or so broken that they could not be counted. */
export const CopyCounts = z.object({
  hives: z.int().nonnegative().nullable(),
  batches: z.int().nonnegative().nullable(),
  /** Looks into mating boxes and hives together. */
  looks: z.int().nonnegative().nullable(),
  queens: z.int().nonnegative().nullable(),
});
export type CopyCounts = z.infer<typeof CopyCounts>;

export interface SafetyCopy {
  /** Its place and file name; what the other operations are given. */
  readonly id: string;
  readonly file: string;
  readonly place: 'here' | 'second';
  /** Instant it was made, ISO 8601 UTC. */
  readonly at: string;
  readonly purpose: CopyPurpose;
  readonly bytes: number;
  /** It was compared row for row with the workbook when it was made, and has its size still. */
  readonly checked: boolean;
  /** null for a copy whose note is lost. */
  readonly counts: CopyCounts | null;
}

/** Why no old copies are removed at present: the person went back to one, or much was missing in the latest. */
export type Hold = 'restored' | 'counts-fell' | 'harmed';

/** The file opened and is not what it was when it was closed: broken inside, or with a row changed from outside. */
export interface Harm {
  readonly kind: 'damaged' | 'changed';
  /** Instant of the newest checked copy; null when there is none. */
  readonly copyAt: string | null;
}

export interface CopyList {
  /** The workbook the copies are of: the open one, or the one that could not be opened. */
  readonly of: WorkbookRef | null;
  /** Newest first. */
  readonly copies: readonly SafetyCopy[];
  readonly folder: string;
  readonly secondPlace: {
    readonly folder: string;
    readonly reachable: boolean;
    /** Instant of the newest copy that lies there; null when none does or it cannot be reached. */
    readonly newestAt: string | null;
  } | null;
  readonly hold: Hold | null;
}

const CopyId = z.string().min(1).max(600);
const Folder = z.string().trim().min(1).max(4096);

export const OpenCopy = z.object({ copy: CopyId });
export const RestoreCopy = z.object({
  copy: CopyId,
  /** Folder to put it in; null = where the workbook is or was. */
  folder: Folder.nullable(),
});
export const SetSecondPlace = z.object({ folder: Folder.nullable() });

export interface Restored {
  /** Where the workbook as it was until now is kept; null when there was none. */
  readonly keptAs: string | null;
}

export type CopiesRefusal =
  | { readonly kind: 'no-workbook-to-copy' }
  | { readonly kind: 'copy-not-made'; readonly reason: 'disk-full' | 'drive-error' | 'read-only' }
  | { readonly kind: 'copy-not-found'; readonly field: 'copy' }
  | { readonly kind: 'copy-not-sound'; readonly field: 'copy'; readonly file: string }
  | { readonly kind: 'second-place-same'; readonly field: 'folder'; readonly folder: string };
