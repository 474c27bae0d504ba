import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { CountedStage } from '../../../shared/model/batch.ts';
import { checkStageCounts } from '../../engine/yield/stage-counts.ts';

/** The first contradiction in the counts of one bar, as the person is told; null when there is none. */
export function countRefusal({
  given,
  taken,
  removed,
  sealed,
}: Readonly<Record<CountedStage, number | null>>): Refusal | null {
  const entered = taken === null ? null : taken - (removed ?? 0);
  const [trouble] = checkStageCounts({ given, taken, sealed }, { sealed: entered });
  if (!trouble) {
    // Not more were taken than were given, so not more can be left than those without the removed ones.
    const most = taken === null && given !== null && removed !== null ? given - removed : null;
    if (most === null || sealed === null || sealed <= most) return null;
    return { kind: 'more-sealed-than-left', field: 'sealed', given: given ?? 0, removed: removed ?? 0, sealed };
  }
  if (trouble.field === 'taken')
    return { kind: 'more-taken-than-given', field: 'taken', given: given ?? 0, taken: taken ?? 0 };
  if (trouble.kind === 'enteredNotAWholeNumber')
    return { kind: 'more-removed-than-taken', field: 'removed', taken: taken ?? 0, removed: removed ?? 0 };
  return entered === null
    ? { kind: 'more-sealed-than-given', field: 'sealed', given: given ?? 0, sealed: sealed ?? 0 }
    : { kind: 'more-sealed-than-taken', field: 'sealed', taken: entered, sealed: sealed ?? 0 };
}
