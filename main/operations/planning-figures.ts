import { Settings } from '../../shared/contract/settings.ts';
import type { Tables } from '../workbook/workbook.ts';

/** Planning figures that hold until the person sets others: common practice, no source. */
const USUAL = { cellsPerBuilder: 20, builderRestDays: 5 };

/** How many cells a builder should finish at once, and how long it rests after a set. */
export function planningFigures(tables: Tables): {
  readonly cellsPerBuilder: number;
  readonly builderRestDays: number;
} {
  const cells = Settings.shape.cellsPerBuilder.safeParse(tables.settings.get('cellsPerBuilder'));
  const rest = Settings.shape.builderRestDays.safeParse(tables.settings.get('builderRestDays'));
  return {
    cellsPerBuilder: cells.success ? cells.data : USUAL.cellsPerBuilder,
    builderRestDays: rest.success ? rest.data : USUAL.builderRestDays,
  };
}
