import type { ClashList } from '../../shared/contract/clashes.ts';
import { type Day, isoOfDay } from '../../shared/kernel/day.ts';
import { unreachable } from '../../shared/kernel/unreachable.ts';
import type { Clash, ClashOf, PlannedBatch } from '../../shared/model/clash.ts';
import type { BatchTally } from '../../shared/model/tally.ts';
import { findClashes } from '../engine/calendar/find-clashes.ts';
import type { Tables } from '../workbook/workbook.ts';
import { tallyOf } from './batch-lines.ts';
import { type RunningBatch, runningBatches } from './hands-off.ts';
import type { Desk } from './operation.ts';
import { plannedBoxes } from './planned-boxes.ts';
import { planningRules } from './planning-rules.ts';

/**
 * What is still ahead and cannot go as planned, over all batches that run or are planned.
 * @param extra a batch that is only being thought of.
 */
export function readClashes(
  { workbook: { tables }, today }: Pick<Desk, 'workbook' | 'today'>,
  extra: PlannedBatch | null = null,
): readonly Clash[] {
  const planned = runningBatches(tables, today).map((running) => plannedBatch(tables, running));
  const all = extra === null ? planned : [...planned, extra];
  return findClashes(all, plannedBoxes(tables, today), planningRules(tables)).filter((clash) => isAhead(clash, today));
}

/** A running batch as far as clashes are concerned. Cells that are in boxes weigh on no builder any more. */
export function plannedBatch(tables: Tables, { batch, timetable }: RunningBatch): PlannedBatch {
  const isPlaced = timetable.steps.some((step) => step.step === 'place-cells' && step.doneOn !== null);
  return {
    id: batch.id,
    timetable,
    builderId: batch.builderId,
    breederId: batch.breederId,
    cells: isPlaced ? null : cellsOf(tallyOf(tables, batch), batch.cellsPlanned),
    barIds: tables.bars.where({ batchId: batch.id }).map((bar) => bar.id),
  };
}

/** The latest count there is, else what was planned. */
const cellsOf = (tally: BatchTally, planned: number | null): number | null =>
  tally.sealed ?? tally.enteredSealing ?? tally.taken ?? tally.given ?? planned;

/** Clashes of one batch only. */
export const clashesOf = (clashes: readonly Clash[], batchId: string): readonly Clash[] =>
  clashes.filter((clash) => batchesIn(clash).includes(batchId));

function batchesIn(clash: Clash): readonly string[] {
  if (clash.kind === 'too-few-boxes') return clash.batches;
  return 'other' in clash ? [clash.batch, clash.other] : [clash.batch];
}

/** What has happened cannot be resolved any more. */
function isAhead(clash: Clash, today: Day): boolean {
  switch (clash.kind) {
    case 'too-many-cells':
    case 'ages-mixed-on-bar':
      return true;
    case 'no-drones-yet':
      return clash.fliesFrom >= today;
    case 'builder-busy':
    case 'too-few-boxes':
    case 'must-step-away':
    case 'job-in-hands-off':
      return clash.on >= today;
    default:
      return unreachable(clash);
  }
}

/** Clashes for the page: days as text, and what the batches, hives and boxes in them are called. */
export function clashList(tables: Tables, clashes: readonly Clash[]): ClashList {
  const ids = clashes.flatMap((clash) => [
    ...batchesIn(clash),
    ...('builderId' in clash ? [clash.builderId] : []),
    ...('hiveId' in clash ? [clash.hiveId] : []),
  ]);
  const nameOf = (id: string): string | undefined => tables.batches.get(id)?.code ?? tables.colonies.get(id)?.code;
  return {
    clashes: clashes.map((clash) => ({ ...isoClash(clash), batchIds: batchesIn(clash) })),
    names: Object.fromEntries([...new Set(ids)].map((id) => [id, nameOf(id) ?? '']).filter(([, name]) => name !== '')),
  };
}

function isoClash(clash: Clash): ClashOf<string> {
  switch (clash.kind) {
    case 'builder-busy':
      return {
        ...clash,
        on: isoOfDay(clash.on),
        holdsUntil: isoOfDay(clash.holdsUntil),
        freeFrom: isoOfDay(clash.freeFrom),
      };
    case 'too-many-cells':
      return clash;
    case 'too-few-boxes':
      return { ...clash, on: isoOfDay(clash.on), deadline: isoOfDay(clash.deadline) };
    case 'ages-mixed-on-bar':
      return { ...clash, on: isoOfDay(clash.on), otherOn: isoOfDay(clash.otherOn) };
    case 'must-step-away':
      return { ...clash, on: isoOfDay(clash.on), suits: clash.suits.map(isoOfDay) };
    case 'job-in-hands-off':
      return {
        ...clash,
        on: isoOfDay(clash.on),
        until: isoOfDay(clash.until),
        alternatives: clash.alternatives.map(isoOfDay),
      };
    case 'no-drones-yet':
      return {
        ...clash,
        fliesFrom: isoOfDay(clash.fliesFrom),
        dronesMatureFrom: isoOfDay(clash.dronesMatureFrom),
      };
    default:
      return unreachable(clash);
  }
}
