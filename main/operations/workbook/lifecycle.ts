import { type Day, dayOfIso, isIsoDay } from '../../../shared/kernel/day.ts';
import type { Language } from '../../../shared/kernel/language.ts';
import type { Reckoner } from '../../engine/yield/reckon.ts';
import type { Clock, Ids } from '../../ports/ports.ts';
import type { Keeper, Workbook } from '../../workbook/workbook.ts';
import type { Desk } from '../operation.ts';
import { HELD_AT } from '../workbook-marks.ts';

/** What the operations that open and close workbooks are handed: there may be none open yet. */
export interface Lifecycle {
  readonly keeper: Keeper;
  readonly clock: Clock;
  readonly ids: Ids;
  readonly reckon: Reckoner;
  readonly computerLanguage: Language;
  /** The program's version; a demo built by another version is built anew. */
  readonly version: string;
  readonly demo: DemoPlan;
}

/** The made-up yard. Handed in, because it is built through the operations of all other features. */
export interface DemoPlan {
  /** The day it is held at, as demo and in the practice workbook. */
  readonly day: Day;
  build(desk: Desk): void;
}

/** The day a workbook reckons with. An invented yard is held at one day, so that its jobs are always due today. */
export function dayOf(workbook: Workbook, clock: Clock): Day {
  const heldAt = workbook.kind !== 'real' ? workbook.tables.settings.get(HELD_AT) : null;
  return typeof heldAt === 'string' && isIsoDay(heldAt) ? dayOfIso(heldAt) : clock.today();
}

/** What all other operations are handed, or null while no workbook is open. */
export function deskOf({
  keeper,
  clock,
  ids,
  reckon,
  computerLanguage,
}: Pick<Lifecycle, 'keeper' | 'clock' | 'ids' | 'reckon' | 'computerLanguage'>): Desk | null {
  const workbook = keeper.current;
  return workbook === null ? null : { workbook, today: dayOf(workbook, clock), ids, reckon, computerLanguage };
}
