import type { Refusal } from '../../../shared/contract/refusal.ts';
import { dayOfIso } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { dayChanges, type MethodCopy } from '../../../shared/model/method-copy.ts';
import { planTimetable } from '../../engine/calendar/plan-timetable.ts';
import type { Desk } from '../operation.ts';

/** Any day will do: whether a copy's windows are in order does not hang on the date. */
const SOME_DAY = dayOfIso('2026-05-01');

/** Writes the person's own copy of a method; it keeps its origin, and holds only what differs. */
export function saveMethodCopy({ workbook }: Desk, copy: MethodCopy): Result<MethodCopy, Refusal> {
  return workbook.change({ did: 'save-method-copy', method: copy.name }, ({ methodCopies }) => {
    const known = methodCopies.get(copy.id);
    if (methodCopies.all().some((other) => other.id !== copy.id && other.name === copy.name))
      return refuse({ kind: 'method-name-in-use', field: 'name', name: copy.name });
    const turned = turnedRound(copy);
    if (turned) return refuse(turned);
    const kept = { ...copy, origin: known?.origin ?? copy.origin };
    if (known) methodCopies.update(kept);
    else methodCopies.insert(kept);
    return ok(kept);
  });
}

/** The calendar's own check of the copy's days; only what it says of windows concerns a copy. */
function turnedRound({ origin, changes }: MethodCopy): Refusal | null {
  const planned = planTimetable({
    method: origin,
    comb: 'drawn',
    builderType: 'queenless',
    boxType: null,
    anchor: { step: 'give-larvae', on: SOME_DAY },
    larvaAgeHours: null,
    sealedStageCelsius: null,
    seen: [],
    done: [],
    moved: [],
    changes: dayChanges({ changes }),
  });
  return !planned.ok && planned.refusal.kind === 'window-turned-round' ? planned.refusal : null;
}
