import type { Keeper } from '../../workbook/workbook.ts';

/** What the operations on drafts are handed. */
export interface DraftDesk {
  readonly keeper: Keeper;
}
