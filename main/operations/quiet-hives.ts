import type { QuietHive } from '../../shared/contract/today.ts';
import { addDays, type Day, dayOfIso, isoOfDay } from '../../shared/kernel/day.ts';
import type { FollowUp } from '../../shared/model/follow-up.ts';
import type { Tables } from '../workbook/workbook.ts';

/** Checks up to which a hive is left alone; whether she stayed is seen at any look. */
const QUIET_BEFORE: readonly FollowUp['what'][] = ['check-release', 'check-eggs'];

/** Hives with a queen just brought in, until the day before her next check; none once a check is due. */
export function quietHives(tables: Tables, today: Day): readonly QuietHive[] {
  const open = tables.followUps.where({ doneOn: null }).filter((one) => QUIET_BEFORE.includes(one.what));
  return [...Map.groupBy(open, (one) => one.colonyId)].flatMap(([colonyId, checks]) => {
    const next = checks.toSorted((a, b) => (a.dueOn < b.dueOn ? -1 : 1))[0];
    const colony = colonyId === null ? null : tables.colonies.get(colonyId);
    const queen = next?.queenId ? tables.queens.get(next.queenId) : null;
    if (!next || !colony || !queen || dayOfIso(next.dueOn) <= today) return [];
    const yard = colony.yardId === null ? null : (tables.yards.get(colony.yardId)?.name ?? null);
    const until = isoOfDay(addDays(dayOfIso(next.dueOn), -1));
    return [{ id: colony.id, code: colony.code, yard, queen: queen.number, until }];
  });
}
