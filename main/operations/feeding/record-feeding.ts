import type { z } from 'zod';
import type { FeedingSaved, RecordFeeding } from '../../../shared/contract/feeding.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';
import { markFeedJobs } from './feed-jobs.ts';
import { feedingNotices, givenFeed } from './given-feed.ts';

/** Writes down what one hive or one mating box was fed; the same id again corrects it. */
export function recordFeeding(desk: Desk, typed: z.infer<typeof RecordFeeding>): Result<FeedingSaved, Refusal> {
  const { id, place, placeId } = typed;
  const { colonies, boxes } = desk.workbook.tables;
  const found = place === 'hive' ? colonies.get(placeId) : boxes.get(placeId);
  const step = { did: 'record-feeding', places: found?.code ?? '', on: typed.fedOn } as const;
  return desk.workbook.change(step, (tables) => {
    const { feedings } = tables;
    if (!found) return refuse({ kind: 'nothing-to-feed', field: 'placeId', code: placeId });
    const given = givenFeed(desk, typed);
    if (!given.ok) return given;
    const whose = place === 'hive' ? { colonyId: placeId, boxId: null } : { colonyId: null, boxId: placeId };
    const feeding = { id, ...whose, ...given.value };
    if (feedings.get(id)) feedings.update(feeding);
    else feedings.insert(feeding);
    return ok({
      feedings: [feeding],
      notices: [...markFeedJobs(desk, tables, feeding), ...feedingNotices(desk, feeding)],
    });
  });
}
