import { type LabelSheetKey, labelSheet, labelsOnSheet } from '../../../shared/model/label-sheet.ts';
import type { Tables } from '../../workbook/workbook.ts';

const settingKey = (sheet: LabelSheetKey): string => `firstFreeLabel ${sheet}`;

/** The first label not used yet on the sheet last printed on, from 1. */
export function firstFreeLabel(tables: Tables, sheet: LabelSheetKey): number {
  const stored = tables.settings.get(settingKey(sheet));
  return typeof stored === 'number' && stored >= 1 && stored <= labelsOnSheet(labelSheet(sheet)) ? stored : 1;
}

export function rememberFirstFree(tables: Tables, sheet: LabelSheetKey, next: number): void {
  tables.settings.put(settingKey(sheet), next);
}
