import type { FollowUpLine } from '../../shared/contract/follow-ups.ts';
import { type Day, isoOfDay } from '../../shared/kernel/day.ts';
import type { FollowUp } from '../../shared/model/follow-up.ts';
import type { Tables } from '../workbook/workbook.ts';

/** A follow-up with the names of what it is about. */
export function followUpLine(tables: Tables, followUp: FollowUp, today: Day): FollowUpLine {
  const queen = followUp.queenId === null ? null : tables.queens.get(followUp.queenId);
  const box = followUp.boxId === null ? null : tables.boxes.get(followUp.boxId);
  const colony = followUp.colonyId === null ? null : tables.colonies.get(followUp.colonyId);
  const yardId = colony?.yardId ?? box?.yardId ?? null;
  const { id, what, dueOn, latestOn, doneOn, answer, note } = followUp;
  return {
    id,
    what,
    dueOn,
    latestOn,
    doneOn,
    answer,
    note,
    late: doneOn === null && latestOn < isoOfDay(today),
    queen: queen && { id: queen.id, number: queen.number },
    box: box && { id: box.id, code: box.code },
    hive: colony && { id: colony.id, code: colony.code },
    yard: yardId === null ? null : (tables.yards.get(yardId)?.name ?? null),
  };
}

/** Follow-ups still open that are due by a day, the oldest first. */
export function openFollowUps(tables: Tables, upTo: Day, today: Day): readonly FollowUpLine[] {
  return tables.followUps
    .where({ doneOn: null })
    .filter((one) => one.dueOn <= isoOfDay(upTo))
    .toSorted((a, b) => (a.dueOn < b.dueOn ? -1 : 1))
    .map((one) => followUpLine(tables, one, today));
}
