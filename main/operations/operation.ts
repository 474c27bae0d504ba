import type { Day } from '../../shared/kernel/day.ts';
import type { Language } from '../../shared/kernel/language.ts';
import type { Reckoner } from '../engine/yield/reckon.ts';
import type { Ids } from '../ports/ports.ts';
import type { Workbook } from '../workbook/workbook.ts';

/** What every operation on the open workbook is handed. `today` is the clock's day, or the day the demo is held at. */
export interface Desk {
  readonly workbook: Workbook;
  readonly today: Day;
  readonly ids: Ids;
  /** Answers the questions about rates that take a while, off the main thread. */
  readonly reckon: Reckoner;
  /** The language of the computer, for papers and files where the person chose none. */
  readonly computerLanguage: Language;
}
