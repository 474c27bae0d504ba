import type { BatchChanged } from '../../../shared/contract/batches.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { dayOfIso } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Observation } from '../../../shared/model/observation.ts';
import type { Desk } from '../operation.ts';
import { changeBatch } from './change-batch.ts';
import { stillReadable } from './step-rules.ts';

/** Notes something really seen; every open step follows it. Facts that contradict each other are kept and shown. */
export function recordObservation(desk: Desk, observation: Observation): Result<BatchChanged, Refusal> {
  const { what } = observation;
  return changeBatch(
    desk,
    (batch) => ({ did: 'record-observation', batch, what }),
    observation.batchId,
    (tables, batch) => {
      if (tables.observations.get(observation.id)) tables.observations.update(observation);
      else tables.observations.insert(observation);
      const unreadable = stillReadable(tables, batch);
      if (unreadable) return refuse(unreadable);
      const future = dayOfIso(observation.seenOn) > desk.today;
      return ok(future ? [{ kind: 'day-in-future', field: 'seenOn', day: observation.seenOn } as const] : []);
    },
  );
}
