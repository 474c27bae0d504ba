import type { WorkbookState } from '../../../shared/contract/workbook.ts';
import { isoOfDay, yearOfDay } from '../../../shared/kernel/day.ts';
import { dayOf, type Lifecycle } from './lifecycle.ts';

/** What the page must know before it shows anything else. */
export function getWorkbookState({ keeper, clock, version, computerLanguage }: Lifecycle): WorkbookState {
  const workbook = keeper.current;
  if (workbook === null) return { open: null, ...keeper.known(), version, computerLanguage };
  const today = dayOf(workbook, clock);
  const { name, file, kind, readOnly, readOnlyBecause, riskyPlace, savedAt } = workbook;
  const { lookingAt, harm } = keeper.copies;
  const open = {
    ...{ name, file, kind, readOnly, readOnlyBecause, riskyPlace, harm, lookingAt, savedAt },
    today: isoOfDay(today),
    season: yearOfDay(today),
  };
  return { open, ...keeper.known(), version, computerLanguage };
}
