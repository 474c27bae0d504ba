import type { z } from 'zod';
import type { LookSaved, RecordLook } from '../../../shared/contract/boxes.ts';
import type { Notice, Refusal } from '../../../shared/contract/refusal.ts';
import { dayOfIso, isoOfDay } from '../../../shared/kernel/day.ts';
import type { Id } from '../../../shared/kernel/id.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { MatingBox, Placement } from '../../../shared/model/mating-box.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { BoxReader, daysSince } from '../box-lines.ts';
import type { Desk } from '../operation.ts';
import { leaveEndedBox } from '../queen-moves.ts';
import { keepTally } from '../tally-keeping.ts';
import { lookRow } from './look-rows.ts';
import { markQueen } from './mark-queen.ts';

type TypedLook = z.infer<typeof RecordLook>;

/** Days after emergence past which a virgin is late: mating should be done within three weeks [Büchler et al. 2013, 2.2.2]. */
const LATE_FOR_MATING_DAYS = 21;
/** Sealed brood cannot be there sooner after placing: 1 day to emerge, 8 to the first egg, 9 to sealing (facts of biology). */
const SEALED_BROOD_SOONEST_DAYS = 16;
/** No egg is laid sooner after placing: earliest seen 8 days after emergence. */
const EGGS_SOONEST_DAYS = 7;

/** One row of the evening's typing. Typing the same box and day again corrects the look; it never makes a second one. */
export function recordLook(desk: Desk, typed: TypedLook): Result<LookSaved, Refusal> {
  const { result, queen } = typed;
  const step = (_: Tables, { row }: LookSaved) =>
    ({ did: 'record-look', box: row.code, result, queen: queen?.number ?? null }) as const;
  return desk.workbook.change(step, (tables) => applyLook(desk, tables, typed));
}

/** Writes one look inside a change that is under way. */
export function applyLook(
  desk: Pick<Desk, 'today' | 'ids'>,
  tables: Tables,
  typed: TypedLook,
): Result<LookSaved, Refusal> {
  const box = tables.boxes.get(typed.boxId);
  if (!box) return refuse({ kind: 'box-not-found', field: 'boxId', code: typed.boxId });
  const onThatDay = placementsOn(tables, box, typed.lookedOn);
  const placement = meantBy(tables, onThatDay, typed) ?? openPlacement(tables, box);
  if (placement && typed.lookedOn < placement.placedOn)
    return refuse({ kind: 'look-before-placing', field: 'lookedOn', placedOn: placement.placedOn });
  const isNews = isNewest(tables, typed);
  const before = writeLook(tables, typed, placement);
  if (typed.queen) {
    const refusal = markQueen(tables, typed.queen, { box, placement, typed });
    if (refusal) return refuse(refusal);
    if (placement) leaveEndedBox(tables, desk.ids, placement);
  }
  if (isNews) closeLooksAgain(tables, typed);
  for (const batchId of batchesOf(tables, [before, placement?.id ?? null])) keepTally(tables, batchId);
  const reader = new BoxReader(tables, desk.today);
  return ok({
    row: lookRow(tables, reader, box, typed.lookedOn),
    notices: [...swapNotice(tables, box, onThatDay, placement), ...lookNotices(desk, reader, box, placement, typed)],
  });
}

/**
 * Whether a look says something that was not known when another one was wanted: it is no correction, and none of a later
 * day was typed already.
 */
function isNewest(tables: Tables, { boxId, lookedOn, result }: TypedLook): boolean {
  const saidAlready = tables.boxLooks
    .where({ boxId })
    .some((look) => look.lookedOn >= lookedOn && look.result !== 'not-looked');
  return result !== 'not-looked' && !saidAlready;
}

/** The newest look answers the one that was wanted again. */
function closeLooksAgain(tables: Tables, { boxId, lookedOn }: TypedLook): void {
  for (const wanted of tables.followUps.where({ boxId, doneOn: null }))
    tables.followUps.update({ ...wanted, doneOn: lookedOn, answer: 'well' });
}

/** The cells that were in the box on a day, the earlier first: two where it was emptied and filled again on it. */
const placementsOn = ({ placements }: Tables, box: MatingBox, on: string): readonly Placement[] =>
  placements
    .where({ boxId: box.id })
    .filter((one) => one.placedOn <= on && (one.endedOn === null || on <= one.endedOn))
    .toSorted((a, b) => (a.placedOn < b.placedOn ? -1 : a.placedOn > b.placedOn ? 1 : a.endedOn === null ? 1 : -1));

const openPlacement = ({ placements }: Tables, box: MatingBox): Placement | null =>
  placements.where({ boxId: box.id, endedOn: null })[0] ?? null;

/**
 * The placement the look belongs to. Of a cell that was put in on that very day there is nothing to see but the cell, so
 * anything else was seen of the one before; a look that is only corrected stays where it was.
 */
function meantBy(
  tables: Tables,
  onThatDay: readonly Placement[],
  { boxId, lookedOn, result }: TypedLook,
): Placement | null {
  const known = tables.boxLooks.where({ boxId, lookedOn })[0];
  const same = known?.result === result ? onThatDay.find(({ id }) => id === known.placementId) : undefined;
  return same ?? (result === 'cell' ? onThatDay.at(-1) : onThatDay[0]) ?? null;
}

/** Where two cells were in the box on that day it is said for which of them the look counts. */
function swapNotice(
  { batches }: Tables,
  box: MatingBox,
  onThatDay: readonly Placement[],
  placement: Placement | null,
): readonly Notice[] {
  if (onThatDay.length < 2 || placement === null) return [];
  const batch = batches.get(placement.batchId)?.code ?? '';
  return [
    {
      kind: 'two-cells-that-day',
      box: box.code,
      batch,
      which: placement.id === onThatDay.at(-1)?.id ? 'new' : 'earlier',
    },
  ];
}

/** Writes the look, and answers the placement that the same look belonged to before: it may have been another batch's. */
function writeLook(tables: Tables, { queen: _queen, ...look }: TypedLook, placement: Placement | null): Id | null {
  const known = tables.boxLooks.where({ boxId: look.boxId, lookedOn: look.lookedOn })[0];
  const row = { ...look, id: known?.id ?? look.id, placementId: placement?.id ?? null };
  if (known) tables.boxLooks.update(row);
  else tables.boxLooks.insert(row);
  return known?.placementId ?? null;
}

function batchesOf(tables: Tables, placementIds: readonly (Id | null)[]): ReadonlySet<Id> {
  const placements = placementIds.flatMap((id) => (id === null ? [] : (tables.placements.get(id) ?? [])));
  return new Set(placements.map((placement) => placement.batchId));
}

function lookNotices(
  { today }: Pick<Desk, 'today'>,
  reader: BoxReader,
  box: MatingBox,
  placement: Placement | null,
  { lookedOn, result }: TypedLook,
): readonly Notice[] {
  const notices: Notice[] = [];
  if (dayOfIso(lookedOn) > today) notices.push({ kind: 'day-in-future', field: 'lookedOn', day: lookedOn });
  const timetable = placement && reader.timetable(placement.batchId);
  if (!placement || !timetable) return notices;
  const on = dayOfIso(lookedOn);
  const age = daysSince(timetable, lookedOn);
  if (['virgin', 'queen'].includes(result) && age > LATE_FOR_MATING_DAYS)
    notices.push({ kind: 'late-for-mating', box: box.code, daysSinceEmergence: age });
  const daysSincePlaced = on - dayOfIso(placement.placedOn);
  const soonest = result === 'proved' ? SEALED_BROOD_SOONEST_DAYS : result === 'laying' ? EGGS_SOONEST_DAYS : 0;
  if (daysSincePlaced < soonest) notices.push({ kind: 'early-result', box: box.code, result, daysSincePlaced });
  const span = timetable.handsOff.find(({ place, from, to }) => place === 'boxes' && from <= on && on <= to);
  if (span && result !== 'not-looked')
    notices.push({ kind: 'look-during-hands-off', box: box.code, until: isoOfDay(span.to) });
  return notices;
}
