import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { WorkbookState } from '../../../shared/contract/workbook.ts';
import { isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import type { Workbook } from '../../workbook/workbook.ts';
import { HELD_AT } from '../workbook-marks.ts';
import { getWorkbookState } from './get-workbook-state.ts';
import type { Lifecycle } from './lifecycle.ts';

/** Opens the made-up yard, a file of its own, held at its own day. */
export function openDemo(lifecycle: Lifecycle): Result<WorkbookState, Refusal> {
  const { keeper, version } = lifecycle;
  const opened = keeper.openDemo(version, (workbook) => buildInto(workbook, lifecycle));
  return opened.ok ? ok(getWorkbookState(lifecycle)) : opened;
}

function buildInto(workbook: Workbook, { demo, ids, reckon, computerLanguage }: Lifecycle): void {
  demo.build({ workbook, today: demo.day, ids, reckon, computerLanguage });
  const held = workbook.change({ did: 'build-demo' }, (tables) => {
    tables.settings.put(HELD_AT, isoOfDay(demo.day));
    return ok(null);
  });
  if (!held.ok) throw new Error(`The demo could not be held at its day: ${held.refusal.kind}.`);
}
