import { z } from 'zod';
import { NameField } from '../model/fields.ts';

export const BeginWorkbook = z.object({
  name: NameField,
  /** Folder to put the file in; null = the usual place, which the page has shown. */
  folder: z.string().min(1).max(4096).nullable(),
});
export const OpenWorkbook = z.object({ file: z.string().min(1).max(4096) });

export interface WorkbookRef {
  readonly name: string;
  readonly file: string;
}

/** What the page must know before it shows anything else. */
export interface WorkbookState {
  readonly open:
    | (WorkbookRef & {
        readonly kind: 'real' | 'demo';
        readonly readOnly: boolean;
        /** The day the workbook reckons with: today, or the day the demo is held at. */
        readonly today: string;
        readonly season: number;
        readonly savedAt: string | null;
      })
    | null;
  /** A workbook that was in use and is not where it was: said plainly, never replaced by a blank one. */
  readonly missing: WorkbookRef | null;
  readonly recent: readonly (WorkbookRef & { readonly found: boolean })[];
  readonly usualFolder: string;
  readonly version: string;
}

export type WorkbookRefusal =
  | { readonly kind: 'file-not-found'; readonly field: 'file'; readonly file: string }
  | { readonly kind: 'folder-not-found'; readonly field: 'folder'; readonly folder: string }
  | { readonly kind: 'file-exists'; readonly field: 'name'; readonly file: string }
  | { readonly kind: 'not-a-workbook'; readonly field: 'file'; readonly file: string }
  | { readonly kind: 'workbook-newer'; readonly field: 'file'; readonly file: string; readonly version: number }
  | { readonly kind: 'workbook-damaged'; readonly field: 'file'; readonly file: string }
  | { readonly kind: 'workbook-open-elsewhere'; readonly field: 'file'; readonly file: string }
  | { readonly kind: 'place-not-writable'; readonly field: 'folder'; readonly folder: string };
