import { isoOfDay } from '../../../shared/kernel/day.ts';
import { type Batch, COUNTED_STAGES, type Count, type StepDone, type StepDrop } from '../../../shared/model/batch.ts';
import type { Colony } from '../../../shared/model/colony.ts';
import type { Feeding } from '../../../shared/model/feeding.ts';
import type { ColonyMove, Treatment } from '../../../shared/model/hive-record.ts';
import { type BoxLook, type HiveLook, LOOK_RESULTS } from '../../../shared/model/look.ts';
import type { Loss } from '../../../shared/model/loss.ts';
import { type MatingBox, PLACEMENT_ENDS, type Placement } from '../../../shared/model/mating-box.ts';
import { BOX_TYPES, BUILDER_TYPES, COMBS, METHODS } from '../../../shared/model/method.ts';
import type { Observation } from '../../../shared/model/observation.ts';
import { QUEEN_PLACES, type Queen } from '../../../shared/model/queen.ts';
import type { QueenPromise } from '../../../shared/model/queen-promise.ts';
import type { QueenFeedback, QueenMove } from '../../../shared/model/queen-story.ts';
import { STEPS } from '../../../shared/model/step.ts';
import type { StockScore, StockTest } from '../../../shared/model/stock.ts';
import type { TableKey } from '../../../shared/model/table-key.ts';
import type { BatchTally } from '../../../shared/model/tally.ts';
import type { WeatherDay } from '../../../shared/model/weather.ts';
import type { Wish } from '../../../shared/model/wish.ts';
import type { Words } from '../../../shared/text/english/english.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { hasCalendar, timetableOf } from '../batch-calendar.ts';
import {
  barNumber,
  batchCode,
  boxCode,
  type ColumnOf,
  choice,
  column,
  day,
  hiveCode,
  number,
  placementOf,
  queenNumber,
  text,
  yardName,
} from './column-kinds.ts';
import { RECORD_COLUMNS } from './record-columns.ts';

interface RowOf {
  readonly hives: Colony;
  readonly batches: Batch;
  readonly counts: Count;
  readonly boxes: MatingBox;
  readonly placements: Placement;
  readonly looks: BoxLook;
  readonly queens: Queen;
  readonly tallies: BatchTally;
  readonly 'steps-done': StepDone;
  readonly 'steps-dropped': StepDrop;
  readonly losses: Loss;
  readonly sightings: Observation;
  readonly 'queen-moves': QueenMove;
  readonly 'queen-feedback': QueenFeedback;
  readonly 'queen-promises': QueenPromise;
  readonly 'hive-looks': HiveLook;
  readonly 'hive-moves': ColonyMove;
  readonly feedings: Feeding;
  readonly treatments: Treatment;
  readonly 'hive-scores': StockScore;
  readonly 'hive-tests': StockTest;
  readonly weather: WeatherDay;
  readonly wishes: Wish;
}

/** A column without words, or words without a column, does not compile. */
export type ColumnsOfAll = {
  readonly [Key in TableKey]: { readonly [Heading in keyof Words['tables'][Key]['columns']]: ColumnOf<RowOf[Key]> };
};

export const SHEET_COLUMNS: ColumnsOfAll = {
  ...RECORD_COLUMNS,
  hives: {
    id: text((hive) => hive.id),
    code: text((hive) => hive.code),
    name: text((hive) => hive.name),
    yard: text((hive, tables) => yardName(tables, hive.yardId)),
    place: text((hive) => hive.place),
    mother_line: text((hive) => hive.motherLine),
    roles: text((hive, tables) => rolesOf(tables, hive)),
    note: text((hive) => hive.note),
    ended_on: day((hive) => hive.endedOn),
  },
  batches: {
    id: text((batch) => batch.id),
    code: text((batch) => batch.code),
    season: number((batch) => batch.season, 'year'),
    method: choice(METHODS, (batch) => batch.method),
    own_method: text((batch, { methodCopies }) =>
      batch.methodCopyId === null ? null : (methodCopies.get(batch.methodCopyId)?.name ?? null),
    ),
    comb: choice(COMBS, (batch) => batch.comb),
    builder_type: choice(BUILDER_TYPES, (batch) => batch.builderType),
    breeder: text((batch, tables) => hiveCode(tables, batch.breederId)),
    builder: text((batch, tables) => hiveCode(tables, batch.builderId)),
    anchor_step: choice(STEPS, (batch) => batch.anchorStep),
    anchor_on: day((batch) => batch.anchorOn),
    larvae_given_on: day((batch, tables) =>
      hasCalendar(tables, batch) ? isoOfDay(timetableOf(tables, batch).larvaeGivenOn) : null,
    ),
    larva_age_from_h: number((batch) => batch.larvaAgeFromHours, 'hours'),
    larva_age_to_h: number((batch) => batch.larvaAgeToHours, 'hours'),
    sealed_celsius: number((batch) => batch.sealedCelsius, '°C'),
    cells_planned: number((batch) => batch.cellsPlanned, 'cells'),
    practice: column('yes-no', (batch) => batch.practice),
    note: text((batch) => batch.note),
    lesson: text((batch) => batch.lesson),
    closed_on: day((batch) => batch.closedOn),
  },
  counts: {
    id: text((count) => count.id),
    batch: text((count, tables) => batchCode(tables, count.batchId)),
    bar: number((count, tables) => barNumber(tables, count.barId)),
    stage: choice(COUNTED_STAGES, (count) => count.stage),
    cells: number((count) => count.cells, 'cells'),
    counted_on: day((count) => count.countedOn),
  },
  boxes: {
    id: text((box) => box.id),
    code: text((box) => box.code),
    yard: text((box, tables) => yardName(tables, box.yardId)),
    row: text((box) => box.row),
    walk_order: number((box) => box.walkOrder),
    box_type: choice(BOX_TYPES, (box) => box.boxType),
    note: text((box) => box.note),
    retired_on: day((box) => box.retiredOn),
  },
  placements: {
    id: text((placement) => placement.id),
    box: text((placement, tables) => boxCode(tables, placement.boxId)),
    batch: text((placement, tables) => batchCode(tables, placement.batchId)),
    bar: number((placement, tables) => barNumber(tables, placement.barId)),
    placed_on: day((placement) => placement.placedOn),
    ended_on: day((placement) => placement.endedOn),
    end_reason: choice(PLACEMENT_ENDS, (placement) => placement.endReason),
  },
  looks: {
    id: text((look) => look.id),
    box: text((look, tables) => boxCode(tables, look.boxId)),
    batch: text((look, tables) => batchCode(tables, placementOf(tables, look.placementId)?.batchId ?? null)),
    placement_id: text((look) => look.placementId),
    looked_on: day((look) => look.lookedOn),
    result: choice(LOOK_RESULTS, (look) => look.result),
    strength: number((look) => look.strength, '1 to 5'),
    food: number((look) => look.food, '1 to 5'),
    note: text((look) => look.note),
  },
  queens: {
    id: text((queen) => queen.id),
    number: text((queen) => queen.number),
    born_in: number((queen) => queen.bornIn, 'year'),
    batch: text((queen, tables) => batchCode(tables, queen.batchId)),
    born_in_box: text((queen, tables) => boxCode(tables, placementOf(tables, queen.placementId)?.boxId ?? null)),
    breeder: text((queen, tables) => hiveCode(tables, queen.breederId)),
    mother: text((queen, tables) => queenNumber(tables, queen.motherId)),
    mother_line: text((queen) => queen.motherLine),
    marked_on: day((queen) => queen.markedOn),
    first_eggs_on: day((queen) => queen.firstEggsOn),
    proved_on: day((queen) => queen.provedOn),
    place: choice(QUEEN_PLACES, (queen) => queen.place),
    box: text((queen, tables) => boxCode(tables, queen.boxId)),
    hive: text((queen, tables) => hiveCode(tables, queen.colonyId)),
    gone_to: text((queen) => queen.goneTo),
    note: text((queen) => queen.note),
  },
  tallies: {
    batch: text((tally, tables) => batchCode(tables, tally.batchId)),
    given: number((tally) => tally.given, 'cells'),
    taken: number((tally) => tally.taken, 'cells'),
    entered_sealing: number((tally) => tally.enteredSealing, 'cells'),
    sealed: number((tally) => tally.sealed, 'cells'),
    placed: number((tally) => tally.placed, 'cells'),
    emergence_known: number((tally) => tally.emergenceKnown, 'cells'),
    emerged: number((tally) => tally.emerged, 'queens'),
    mating_known: number((tally) => tally.matingKnown, 'queens'),
    proved: number((tally) => tally.proved, 'queens'),
    laying: number((tally) => tally.laying, 'queens'),
  },
  weather: {
    day: day((weather) => weather.day),
    max_celsius: number((weather) => weather.maxCelsius, '°C'),
    wind_kmh: number((weather) => weather.windKmh, 'km/h'),
    rain: column('yes-no', (weather) => weather.rain),
    flying_hours: number((weather) => weather.flyingHours, 'hours'),
  },
  wishes: {
    id: text((wish) => wish.id),
    for_whom: text((wish) => wish.forWhom),
    queens: number((wish) => wish.queens, 'queens'),
    wanted_on: day((wish) => wish.wantedOn),
    settled_on: day((wish) => wish.settledOn),
    note: text((wish) => wish.note),
  },
};

/** 2025 breeder; 2026 breeder, builder */
function rolesOf(tables: Tables, hive: Colony): string | null {
  const roles = tables.colonyRoles.where({ colonyId: hive.id });
  const bySeason = Map.groupBy(roles, ({ season }) => season);
  const lines = [...bySeason].toSorted(([a], [b]) => a - b);
  const told = lines.map(([season, own]) => `${season} ${own.map(({ role }) => role).join(', ')}`);
  return told.length === 0 ? null : told.join('; ');
}
