import type { PlanWeek, SeasonPlan, WishLine } from '../../../shared/contract/season-plan.ts';
import {
  addDays,
  type Day,
  dayOfIso,
  type IsoDay,
  isoOfDay,
  startOfWeek,
  yearOfDay,
} from '../../../shared/kernel/day.ts';
import { type InUse, mostAtOnce } from '../../engine/calendar/most-at-once.ts';
import { isOpen } from '../../engine/calendar/open-steps.ts';
import { streamDays } from '../../engine/calendar/stream-picture.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { tallyOf } from '../batch-lines.ts';
import { BoxReader } from '../box-lines.ts';
import { type BuilderHold, builderHolds } from '../builder-holds.ts';
import { type RunningBatch, runningBatches } from '../hands-off.ts';
import type { Desk } from '../operation.ts';
import { plannedBoxes } from '../planned-boxes.ts';
import { planningRules } from '../planning-rules.ts';
import { plannedBatch } from '../read-clashes.ts';
import { storedSettings } from '../stored-settings.ts';
import { wishLines } from '../wish-lines.ts';

/** The season ahead, week by week: queens wanted, builders and boxes in use, days away, and when drones are mature. */
export function getSeasonPlan({ workbook: { tables }, today }: Desk): SeasonPlan {
  const running = runningBatches(tables, today);
  const wishes = wishLines(tables);
  const rules = planningRules(tables);
  const boxes = new BoxReader(tables, today);
  const states = tables.boxes.where({ retiredOn: null }).map((box) => boxes.line(box).state);
  return {
    weeks: weeksOf(tables, running, wishes, today),
    wishes,
    laying: states.filter((state) => state === 'laying').length,
    proved: states.filter((state) => state === 'proved').length,
    awayDays: [...rules.awayDays].map(isoOfDay).toSorted(),
    dronesMatureFrom: rules.dronesMatureFrom === null ? null : isoOfDay(rules.dronesMatureFrom),
  };
}

function weeksOf(
  tables: Tables,
  running: readonly RunningBatch[],
  wishes: readonly WishLine[],
  today: Day,
): readonly PlanWeek[] {
  const open = wishes.filter((wish) => wish.open > 0);
  const weeks = weekStarts(
    tables,
    running,
    open.map(({ wantedOn }) => wantedOn),
    today,
  );
  const holds = builderHolds(tables);
  const builders = mostAtOnce(
    holds.map(({ builderId, from, until }) => ({ id: builderId, from, to: until })),
    weeks,
  );
  const boxes = mostAtOnce([...heldBoxes(tables, today), ...cellsAhead(tables, running, today)], weeks);
  const builderCount = buildersOf(tables, holds, today);
  const boxCount = tables.boxes.where({ retiredOn: null }).length;
  return weeks.map((week, index) => ({
    from: isoOfDay(week),
    builders: { most: builders[index] ?? 0, of: builderCount },
    boxes: { most: boxes[index] ?? 0, of: boxCount },
    wanted: open
      .filter(({ wantedOn }) => dayOfIso(wantedOn) < week + WEEK_DAYS)
      .reduce((sum, wish) => sum + wish.open, 0),
  }));
}

const WEEK_DAYS = 7;
/** A wish for the year after next does not make the strip endless. */
const MOST_WEEKS = 40;

function weekStarts(
  tables: Tables,
  running: readonly RunningBatch[],
  wantedOn: readonly IsoDay[],
  today: Day,
): readonly Day[] {
  const spans = running.map(({ batch, timetable }) =>
    streamDays(timetable, tallyOf(tables, batch), batch.cellsPlanned),
  );
  const ends = [...spans.map(({ to }) => to), ...wantedOn.map(dayOfIso)];
  if (ends.length === 0) return [];
  const { weekStart } = storedSettings(tables.settings);
  const first = startOfWeek(Math.min(today, ...spans.map(({ from }) => from)) as Day, weekStart);
  const last = Math.max(today, ...ends);
  const weeks = Math.min(MOST_WEEKS, Math.ceil((last + 1 - first) / WEEK_DAYS));
  return Array.from({ length: weeks }, (_, index) => addDays(first, index * WEEK_DAYS));
}

/** Each box that held or holds something, from its placing until it can take another cell. */
function heldBoxes(tables: Tables, today: Day): readonly InUse[] {
  const freeFrom = new Map(plannedBoxes(tables, today).map((box) => [box.id, box.freeFrom]));
  return tables.placements.all().map(({ boxId, placedOn, endedOn }) => {
    const free = endedOn === null ? (freeFrom.get(boxId) ?? null) : dayOfIso(endedOn);
    return { id: boxId, from: dayOfIso(placedOn), to: free === null ? null : addDays(free, -1) };
  });
}

/** Cells that still want boxes, as many boxes as cells, from their placing to the day their queens are proved. */
function cellsAhead(tables: Tables, running: readonly RunningBatch[], today: Day): readonly InUse[] {
  return running.flatMap((one) => {
    const { id, cells, timetable } = plannedBatch(tables, one);
    const placing = timetable.steps.find(({ step }) => step === 'place-cells');
    if (cells === null || !placing || !isOpen(placing) || placing.latest < today) return [];
    const proved = timetable.steps.find(({ step }) => step === 'sealed-brood-look')?.expected ?? null;
    return Array.from({ length: cells }, (_, cell) => ({ id: `${id} ${cell}`, from: placing.expected, to: proved }));
  });
}

/** Hives that are builders this season, by their role or because a batch is in them, and still a hive of their own. */
function buildersOf(tables: Tables, holds: readonly BuilderHold[], today: Day): number {
  const byRole = tables.colonyRoles
    .where({ role: 'builder', season: yearOfDay(today) })
    .map(({ colonyId }) => colonyId);
  const all = new Set([...byRole, ...holds.map(({ builderId }) => builderId)]);
  return [...all].filter((id) => tables.colonies.get(id)?.endedOn === null).length;
}
