import type { Keeper } from '../../workbook/workbook.ts';

/** What the operations on safety copies are handed: there may be no workbook open, or one that is damaged. */
export interface CopyDesk {
  readonly keeper: Keeper;
}
