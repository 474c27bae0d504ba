import { dayOfIso } from '../../shared/kernel/day.ts';
import type { PlanningRules } from '../../shared/model/clash.ts';
import { dronesMatureFrom } from '../engine/calendar/drone-plan.ts';
import type { Tables } from '../workbook/workbook.ts';
import { storedSettings } from './stored-settings.ts';

/** What the person has said under Settings about their days, builders and drones, as the calendar wants it. */
export function planningRules(tables: Tables): PlanningRules {
  const settings = storedSettings(tables.settings);
  return {
    awayDays: new Set(settings.awayDays.map(dayOfIso)),
    workWeekdays: settings.workWeekdays,
    cellsPerBuilder: settings.cellsPerBuilder,
    seasonFactor: settings.seasonFactorPercent / 100,
    builderRestDays: settings.builderRestDays,
    dronesMatureFrom: settings.firstDroneEggsOn === null ? null : dronesMatureFrom(dayOfIso(settings.firstDroneEggsOn)),
  };
}
