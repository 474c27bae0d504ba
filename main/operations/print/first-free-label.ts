import { type LabelSheet, labelsOnSheet } from '../../../shared/model/label-sheet.ts';
import type { Tables } from '../../workbook/workbook.ts';

const settingKey = ({ key }: LabelSheet): string => `firstFreeLabel ${key}`;

/** The first label not used yet on the sheet last printed on, from 1. */
export function firstFreeLabel(tables: Tables, sheet: LabelSheet): number {
  const stored = tables.settings.get(settingKey(sheet));
  return typeof stored === 'number' && stored >= 1 && stored <= labelsOnSheet(sheet) ? stored : 1;
}

export function rememberFirstFree(tables: Tables, sheet: LabelSheet, next: number): void {
  tables.settings.put(settingKey(sheet), next);
}
