import { BOX_TURNAROUND } from '../../shared/biology/box-turnaround.ts';
import type { BoxOutlook, ProposalLine } from '../../shared/contract/boxes.ts';
import { addDays, type Day, dayOfIso, isoOfDay } from '../../shared/kernel/day.ts';
import type { Batch } from '../../shared/model/batch.ts';
import type { BoxProposal, CellsComing, ProposalReason } from '../../shared/model/box-proposal.ts';
import type { MatingBox, Placement } from '../../shared/model/mating-box.ts';
import type { Step } from '../../shared/model/step.ts';
import type { Timetable } from '../../shared/model/timetable.ts';
import { type BoxStanding, broodlessSince } from '../engine/boxes/box-standing.ts';
import { freeBoxDays } from '../engine/boxes/free-box.ts';
import { type LayingWorkers, layingWorkersSpan } from '../engine/boxes/laying-workers.ts';
import { nextLook } from '../engine/boxes/next-look.ts';
import { proposeForBox } from '../engine/boxes/propose-for-box.ts';
import type { Tables } from '../workbook/workbook.ts';
import { timetableOf } from './batch-calendar.ts';

export const NO_OUTLOOK: BoxOutlook = {
  nextLookOn: null,
  strength: null,
  freeFrom: null,
  ownCellsOn: null,
  layingWorkersFrom: null,
  layingWorkersLatest: null,
  proposal: null,
};

/** How far back a freed box is still thought to hold the bees it had. */
const BEES_REMAIN_DAYS = 60;

/** What lies ahead of a box that holds something: its next look, and what could be done with it. */
export function heldOutlook(
  tables: Tables,
  placement: Placement,
  timetable: Timetable,
  cellsComing: CellsComing | null,
  today: Day,
): BoxOutlook {
  const standing = standingOf(tables, placement, timetable, cellsComing, today);
  const planned = tables.followUps.where({ boxId: placement.boxId, doneOn: null })[0]?.dueOn ?? null;
  const found = proposeForBox(standing);
  const proposed = planned !== null && found?.kind === 'look-again' ? null : found;
  const next = nextLookBeside(standing, proposed);
  return {
    ...NO_OUTLOOK,
    nextLookOn: proposed === null && planned !== null ? planned : next === null ? null : isoOfDay(next),
    strength: standing.looks.findLast((look) => look.strength !== null)?.strength ?? null,
    proposal: proposed && proposalLine(proposed),
    ...spanTexts(layingWorkersSpan(standing)),
  };
}

/** A box whose cell's story is proposed to end waits for no look. */
function nextLookBeside(standing: BoxStanding, proposed: BoxProposal | null): Day | null {
  if (proposed === null) return nextLook(standing);
  return proposed.kind === 'look-again' ? proposed.on : null;
}

/** What lies ahead of a free box, as its last cell left it. */
export function freeOutlook(tables: Tables, box: MatingBox, today: Day): BoxOutlook {
  const last = tables.placements
    .where({ boxId: box.id })
    .toSorted((a, b) => ((a.endedOn ?? '') < (b.endedOn ?? '') ? -1 : 1))
    .at(-1);
  if (!last?.endedOn) return NO_OUTLOOK;
  const endedOn = dayOfIso(last.endedOn);
  if (today - endedOn > BEES_REMAIN_DAYS) return NO_OUTLOOK;
  const days = freeBoxDays({ endedOn, endReason: last.endReason, broodlessSince: broodlessSinceOf(tables, last) });
  return {
    ...NO_OUTLOOK,
    freeFrom: isoOfDay(days.freeFrom),
    ownCellsOn: days.ownCellsOn === null ? null : isoOfDay(days.ownCellsOn),
    ...spanTexts(days.layingWorkers),
  };
}

const spanTexts = (span: LayingWorkers | null): Pick<BoxOutlook, 'layingWorkersFrom' | 'layingWorkersLatest'> =>
  span
    ? { layingWorkersFrom: isoOfDay(span.earliest), layingWorkersLatest: isoOfDay(span.latest) }
    : { layingWorkersFrom: null, layingWorkersLatest: null };

/** The day since which a box whose placement ended may have been without brood. */
function broodlessSinceOf(tables: Tables, { id, placedOn }: Placement): Day {
  const looks = tables.boxLooks.where({ placementId: id }).map(({ lookedOn, result, strength }) => ({
    on: dayOfIso(lookedOn),
    result,
    strength,
  }));
  return broodlessSince({ looks: looks.toSorted((a, b) => a.on - b.on), placedOn: dayOfIso(placedOn) });
}

function standingOf(
  tables: Tables,
  placement: Placement,
  timetable: Timetable,
  cellsComing: CellsComing | null,
  today: Day,
): BoxStanding {
  const emergenceOn = timetable.emergence.expected;
  const dayOf = (step: Step, usual: number) =>
    timetable.steps.find((one) => one.step === step)?.expected ?? addDays(emergenceOn, usual);
  const firstLook = timetable.steps.find((one) => one.step === 'first-look');
  const looks = tables.boxLooks
    .where({ placementId: placement.id })
    .filter((look) => look.result !== 'not-looked')
    .toSorted((a, b) => (a.lookedOn < b.lookedOn ? -1 : 1));
  return {
    today,
    placedOn: dayOfIso(placement.placedOn),
    emergenceOn,
    looks: looks.map(({ lookedOn, result, strength }) => ({ on: dayOfIso(lookedOn), result, strength })),
    firstLook: {
      earliest: firstLook?.earliest ?? addDays(emergenceOn, 10),
      expected: firstLook?.expected ?? addDays(emergenceOn, 12),
    },
    emergenceCheckOn: dayOf('emergence-check', 2),
    sealedBroodLookOn: dayOf('sealed-brood-look', BOX_TURNAROUND.ageToTake.value),
    lateOn: dayOf('late-warning', BOX_TURNAROUND.lateForMating.value),
    giveUpOn: dayOf('give-up', BOX_TURNAROUND.giveUp.value),
    handsOff: timetable.handsOff.filter((span) => span.place === 'boxes'),
    cellsComing,
  };
}

/** The nearest batch whose ripe cells still want boxes within a week; batches without a cell left are passed over. */
export function cellsComingSoon(tables: Tables, today: Day): CellsComing | null {
  const coming = tables.batches.where({ closedOn: null }).flatMap((batch) => cellsOf(tables, batch, today));
  return coming.toSorted((a, b) => a.on - b.on)[0] ?? null;
}

function cellsOf(tables: Tables, batch: Batch, today: Day): readonly CellsComing[] {
  const timetable = timetableOf(tables, batch);
  const step = timetable.steps.find((one) => one.step === 'place-cells');
  if (!step || step.droppedOn !== null || timetable.placeDeadline < today) return [];
  const on = step.expected < today ? today : step.expected;
  if (on - today > BOX_TURNAROUND.cellsWorthWaiting.value) return [];
  const tally = tables.tallies.get(batch.id);
  const cells = tally?.sealed ?? tally?.taken ?? null;
  const left = cells === null ? null : cells - (tally?.placed ?? 0);
  const placedAlready = step.doneOn !== null && left === null;
  return placedAlready || (left !== null && left <= 0) ? [] : [{ batchId: batch.id, batch: batch.code, on }];
}

const proposalLine = ({ kind, on, freeFrom, cells, reasons }: BoxProposal): ProposalLine => ({
  kind,
  on: isoOfDay(on),
  freeFrom: freeFrom === null ? null : isoOfDay(freeFrom),
  cells: cells && { batchId: cells.batchId, batch: cells.batch, on: isoOfDay(cells.on) },
  reasons: reasons.map(reasonLine),
});

const reasonLine = (reason: ProposalReason): ProposalLine['reasons'][number] =>
  'on' in reason ? { ...reason, on: isoOfDay(reason.on) } : reason;
