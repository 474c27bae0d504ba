import type { BatchLine, HiveRef, StreamPicture } from '../../shared/contract/batches.ts';
import { type Day, isoOfDay } from '../../shared/kernel/day.ts';
import type { Batch } from '../../shared/model/batch.ts';
import type { BatchTally } from '../../shared/model/tally.ts';
import type { Timetable } from '../../shared/model/timetable.ts';
import { isOpenJob } from '../engine/calendar/open-steps.ts';
import { isLateWorthNaming, stepState } from '../engine/calendar/step-state.ts';
import { streamDays } from '../engine/calendar/stream-picture.ts';
import { emptyTally } from '../engine/yield/batch-tally.ts';
import type { Tables } from '../workbook/workbook.ts';
import { timetableOf } from './batch-calendar.ts';

export function hiveRef(tables: Tables, colonyId: string | null): HiveRef | null {
  const colony = colonyId === null ? null : tables.colonies.get(colonyId);
  return colony && { id: colony.id, code: colony.code, name: colony.name };
}

export const tallyOf = (tables: Tables, batch: Batch): BatchTally =>
  tables.tallies.get(batch.id) ?? emptyTally(batch.id);

/** A batch is over when the person closed it, or when its calendar has run out and no box is waiting any more. */
export function batchState(tables: Tables, batch: Batch, timetable: Timetable, today: Day): BatchLine['state'] {
  if (batch.closedOn !== null) return 'closed';
  const started = timetable.steps.some((step) => step.doneOn !== null) || today >= timetable.larvaeGivenOn;
  if (!started) return 'planned';
  const last = timetable.steps.at(-1)?.latest ?? timetable.emergence.latest;
  if (today <= last) return 'running';
  return tables.placements.where({ batchId: batch.id, endedOn: null }).length > 0 ? 'running' : 'closed';
}

export function batchLine(tables: Tables, batch: Batch, today: Day): BatchLine {
  const timetable = timetableOf(tables, batch);
  const tally = tallyOf(tables, batch);
  const { emergence } = timetable;
  const state = batchState(tables, batch, timetable, today);
  return {
    id: batch.id,
    code: batch.code,
    season: batch.season,
    method: batch.method,
    methodName: batch.methodCopyId === null ? null : (tables.methodCopies.get(batch.methodCopyId)?.name ?? null),
    builderType: batch.builderType,
    breeder: hiveRef(tables, batch.breederId),
    builder: hiveRef(tables, batch.builderId),
    larvaeGivenOn: isoOfDay(timetable.larvaeGivenOn),
    emergence: {
      earliest: isoOfDay(emergence.earliest),
      expected: isoOfDay(emergence.expected),
      latest: isoOfDay(emergence.latest),
    },
    state,
    begins: state === 'planned' ? { step: batch.anchorStep, on: batch.anchorOn } : null,
    practice: batch.practice,
    closedOn: batch.closedOn,
    lesson: batch.lesson,
    tally,
    next: state === 'closed' ? null : nextJob(timetable, today),
    stream: streamPicture(tables, batch, timetable, tally, today),
  };
}

function nextJob(timetable: Timetable, today: Day): BatchLine['next'] {
  const open = timetable.steps.filter(isOpenJob);
  const worthNaming = open.filter((step) => {
    const state = stepState(step, timetable.steps, today);
    return state !== 'passed' && (state !== 'late' || isLateWorthNaming(step, today));
  });
  const first = worthNaming.toSorted((a, b) => a.expected - b.expected)[0];
  return first
    ? { step: first.step, on: isoOfDay(first.expected), late: stepState(first, timetable.steps, today) === 'late' }
    : null;
}

function streamPicture(
  tables: Tables,
  batch: Batch,
  timetable: Timetable,
  tally: BatchTally,
  today: Day,
): StreamPicture {
  const stream = streamDays(timetable, tally, batch.cellsPlanned);
  const { emergence } = timetable;
  return {
    from: isoOfDay(stream.from),
    to: isoOfDay(stream.to),
    today: isoOfDay(today),
    bands: stream.bands.map((band) => ({ ...band, from: isoOfDay(band.from), to: isoOfDay(band.to) })),
    emergence: {
      earliest: isoOfDay(emergence.earliest),
      expected: isoOfDay(emergence.expected),
      latest: isoOfDay(emergence.latest),
    },
    gates: timetable.handsOff.map(({ step, from, to }) => ({ step, from: isoOfDay(from), to: isoOfDay(to) })),
    flags: stream.flags.map((flag) => ({ ...flag, on: isoOfDay(flag.on) })),
    losses: stream.losses.map((loss) => ({ ...loss, on: isoOfDay(loss.on) })),
    threads: threadsOf(tables, batch),
  };
}

function threadsOf(tables: Tables, batch: Batch): StreamPicture['threads'] {
  return tables.placements.where({ batchId: batch.id }).map((placement) => ({
    box: tables.boxes.get(placement.boxId)?.code ?? '',
    from: placement.placedOn,
    result: lastLook(tables, placement.id)?.result ?? null,
  }));
}

/** The latest look at a placement that said something; "not looked" says nothing. */
export function lastLook(tables: Tables, placementId: string) {
  return tables.boxLooks
    .where({ placementId })
    .filter((look) => look.result !== 'not-looked')
    .toSorted((a, b) => (a.lookedOn < b.lookedOn ? -1 : 1))
    .at(-1);
}
