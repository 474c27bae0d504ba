import type { z } from 'zod';
import type { AcceptProposal, BoxesChanged } from '../../../shared/contract/boxes.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { addDays, dayOfIso, type IsoDay, isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { ProposalKind } from '../../../shared/model/box-proposal.ts';
import type { MatingBox, PlacementEnd } from '../../../shared/model/mating-box.ts';
import { BoxReader } from '../box-lines.ts';
import type { Desk } from '../operation.ts';
import { endPlacement } from './end-placement.ts';

/**
 * Does what was proposed for a box, in one step: the cell's story is ended with its outcome and the box is free again, or
 * the next look becomes a job.
 * The proposal is reckoned anew first; if the box has changed since it was shown, nothing is done.
 */
export function acceptProposal(desk: Desk, input: z.infer<typeof AcceptProposal>): Result<BoxesChanged, Refusal> {
  const box = desk.workbook.tables.boxes.get(input.boxId);
  if (!box) return refuse({ kind: 'box-not-found', field: 'boxId', code: input.boxId });
  const line = new BoxReader(desk.workbook.tables, desk.today).line(box);
  const stands = line.placementId === input.placementId && line.proposal?.kind === input.kind;
  if (!stands) return refuse({ kind: 'proposal-outdated', box: box.code });
  if (input.kind === 'look-again') return planLook(desk, box, line.proposal?.on ?? input.on);
  const reason = endOf(input.kind, line.state);
  if (reason === null) return refuse({ kind: 'proposal-outdated', box: box.code });
  return endPlacement(desk, { placementId: input.placementId, endedOn: input.on, reason });
}

/** Days after the planned one on which the look is late. */
const GRACE_DAYS = 3;

/** The look becomes a job of its day, on Today and on the board. */
function planLook(desk: Desk, box: MatingBox, dueOn: IsoDay): Result<BoxesChanged, Refusal> {
  return desk.workbook.change({ did: 'plan-look', box: box.code }, (tables) => {
    const latestOn = isoOfDay(addDays(dayOfIso(dueOn), GRACE_DAYS));
    const open = { queenId: null, colonyId: null, doneOn: null, answer: null, note: null };
    tables.followUps.insert({ id: desk.ids.next(), what: 'look-again', dueOn, latestOn, boxId: box.id, ...open });
    return ok({ boxes: [new BoxReader(tables, desk.today).line(box)], notices: [] });
  });
}

/**
 * How the placement ends. A box that still shelters an unmated queen and is united or given a new cell has failed;
 * "united" by itself would leave her outcome open.
 */
function endOf(kind: ProposalKind, state: string): PlacementEnd | null {
  switch (kind) {
    case 're-use':
      return state === 'proved' ? 'caught' : 'failed';
    case 'give-cell':
      return 'failed';
    case 'unite':
      return state === 'failed' ? 'united' : 'failed';
    case 'shake-out':
      return 'shaken-out';
    case 'look-again':
      return null;
  }
}
