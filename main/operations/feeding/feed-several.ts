import type { z } from 'zod';
import type { FeedingSaved, FeedSeveral } from '../../../shared/contract/feeding.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { readBoxCodes, shortCodes } from '../../../shared/kernel/box-codes.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Feeding } from '../../../shared/model/feeding.ts';
import type { Tables } from '../../workbook/workbook.ts';
import type { Desk } from '../operation.ts';
import { markFeedJobs } from './feed-jobs.ts';
import { feedingNotices, givenFeed } from './given-feed.ts';

type Whose = Pick<Feeding, 'colonyId' | 'boxId'>;

/** Writes the same feeding down for all named hives and boxes, or for none of them. */
export function feedSeveral(desk: Desk, typed: z.infer<typeof FeedSeveral>): Result<FeedingSaved, Refusal> {
  const codes = readBoxCodes(typed.places);
  if (codes === null) return refuse({ kind: 'box-codes-unreadable', field: 'places', text: typed.places });
  if (typed.ids.length < codes.length) return refuse({ kind: 'wrong-number-of-ids', needed: codes.length });
  const step = { did: 'record-feeding', places: shortCodes(codes), on: typed.fedOn } as const;
  return desk.workbook.change(step, (tables) => {
    const fed: Whose[] = [];
    for (const code of codes) {
      const whose = placeOfCode(tables, code);
      if (whose === null) return refuse({ kind: 'nothing-to-feed', field: 'places', code });
      fed.push(whose);
    }
    const given = givenFeed(desk, typed);
    if (!given.ok) return given;
    const feedings = fed.map((whose, index) => ({
      id: typed.ids[index] ?? desk.ids.next(),
      ...whose,
      ...given.value,
    }));
    for (const feeding of feedings) tables.feedings.insert(feeding);
    const marked = feedings.flatMap((feeding) => markFeedJobs(desk, tables, feeding));
    return ok({ feedings, notices: [...marked, ...feedingNotices(desk, given.value)] });
  });
}

/** A box in use or a living hive by its code; capitals make no difference. */
function placeOfCode(tables: Tables, code: string): Whose | null {
  const box = tables.boxes.where({ code })[0];
  if (box?.retiredOn === null) return { colonyId: null, boxId: box.id };
  const hive = tables.colonies.all().find((one) => one.endedOn === null && one.code.toUpperCase() === code);
  return hive ? { colonyId: hive.id, boxId: null } : null;
}
