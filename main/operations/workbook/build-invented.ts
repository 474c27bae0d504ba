import { isoOfDay } from '../../../shared/kernel/day.ts';
import { ok } from '../../../shared/kernel/result.ts';
import type { Workbook } from '../../workbook/workbook.ts';
import { HELD_AT } from '../workbook-marks.ts';
import type { Lifecycle } from './lifecycle.ts';

/** Tells the invented yard to an empty workbook, which from then on is held at the yard's own day. */
export function buildInvented(workbook: Workbook, { demo, ids, reckon, computerLanguage }: Lifecycle): void {
  demo.build({ workbook, today: demo.day, ids, reckon, computerLanguage });
  const held = workbook.change({ did: 'build-demo' }, (tables) => {
    tables.settings.put(HELD_AT, isoOfDay(demo.day));
    return ok(null);
  });
  if (!held.ok) throw new Error(`The invented yard could not be held at its day: ${held.refusal.kind}.`);
}
