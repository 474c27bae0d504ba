import { FEEDS } from '../../../shared/model/feeding.ts';
import { LOSS_REASONS, LOSS_STAGES } from '../../../shared/model/loss.ts';
import { QUEEN_PLACES } from '../../../shared/model/queen.ts';
import { FEEDBACK_OUTCOMES, INTRODUCTION_WAYS } from '../../../shared/model/queen-story.ts';
import { OBSERVATION_KINDS, STEPS } from '../../../shared/model/step.ts';
import { STOCK_TESTS, STOCK_TRAITS } from '../../../shared/model/stock.ts';
import { batchCode, boxCode, choice, day, hiveCode, number, queenNumber, text, yardName } from './column-kinds.ts';
import type { ColumnsOfAll } from './sheet-columns.ts';

/** Columns of what was noted on one day: of a batch, a queen, a hive, or the weather. */
export const RECORD_COLUMNS: Pick<
  ColumnsOfAll,
  | 'steps-done'
  | 'steps-dropped'
  | 'losses'
  | 'sightings'
  | 'queen-moves'
  | 'queen-feedback'
  | 'queen-promises'
  | 'hive-looks'
  | 'hive-moves'
  | 'feedings'
  | 'treatments'
  | 'hive-scores'
  | 'hive-tests'
> = {
  'steps-done': {
    id: text((done) => done.id),
    batch: text((done, tables) => batchCode(tables, done.batchId)),
    step: choice(STEPS, (done) => done.step),
    done_on: day((done) => done.doneOn),
    note: text((done) => done.note),
  },
  'steps-dropped': {
    id: text((drop) => drop.id),
    batch: text((drop, tables) => batchCode(tables, drop.batchId)),
    step: choice(STEPS, (drop) => drop.step),
    dropped_on: day((drop) => drop.droppedOn),
    reason: text((drop) => drop.reason),
  },
  losses: {
    id: text((loss) => loss.id),
    batch: text((loss, tables) => batchCode(tables, loss.batchId)),
    stage: choice(LOSS_STAGES, (loss) => loss.stage),
    reason: choice(LOSS_REASONS, (loss) => loss.reason),
    cells: number((loss) => loss.cells, 'cells'),
  },
  sightings: {
    id: text((seen) => seen.id),
    batch: text((seen, tables) => batchCode(tables, seen.batchId)),
    what: choice(OBSERVATION_KINDS, (seen) => seen.what),
    seen_on: day((seen) => seen.seenOn),
    from_h: number((seen) => seen.fromHours, 'hours'),
    to_h: number((seen) => seen.toHours, 'hours'),
    note: text((seen) => seen.note),
  },
  'queen-moves': {
    id: text((move) => move.id),
    queen: text((move, tables) => queenNumber(tables, move.queenId)),
    moved_on: day((move) => move.movedOn),
    place: choice(QUEEN_PLACES, (move) => move.place),
    hive: text((move, tables) => hiveCode(tables, move.colonyId)),
    gone_to: text((move) => move.goneTo),
    way: choice(INTRODUCTION_WAYS, (move) => move.way),
    price: text((move) => move.price),
    note: text((move) => move.note),
  },
  'queen-promises': {
    id: text((promise) => promise.id),
    queen: text((promise, tables) => queenNumber(tables, promise.queenId)),
    promised_on: day((promise) => promise.promisedOn),
    promised_to: text((promise) => promise.promisedTo),
    wanted_on: day((promise) => promise.wantedOn),
    note: text((promise) => promise.note),
  },
  'queen-feedback': {
    id: text((told) => told.id),
    queen: text((told, tables) => queenNumber(tables, told.queenId)),
    told_on: day((told) => told.toldOn),
    told_by: text((told) => told.toldBy),
    outcome: choice(FEEDBACK_OUTCOMES, (told) => told.outcome),
    note: text((told) => told.note),
  },
  'hive-looks': {
    id: text((look) => look.id),
    hive: text((look, tables) => hiveCode(tables, look.colonyId)),
    looked_on: day((look) => look.lookedOn),
    strength: number((look) => look.strength, '1 to 5'),
    food: number((look) => look.food, '1 to 5'),
    note: text((look) => look.note),
  },
  'hive-moves': {
    id: text((move) => move.id),
    hive: text((move, tables) => hiveCode(tables, move.colonyId)),
    moved_on: day((move) => move.movedOn),
    from_yard: text((move, tables) => yardName(tables, move.fromYardId)),
    to_yard: text((move, tables) => yardName(tables, move.toYardId)),
    place: text((move) => move.place),
    paper: text((move) => move.paper),
    note: text((move) => move.note),
  },
  feedings: {
    id: text((feeding) => feeding.id),
    hive: text((feeding, tables) => hiveCode(tables, feeding.colonyId)),
    box: text((feeding, tables) => boxCode(tables, feeding.boxId)),
    fed_on: day((feeding) => feeding.fedOn),
    feed: choice(FEEDS, (feeding) => feeding.feed),
    own_feed: text((feeding) => feeding.ownFeed),
    litres: number((feeding) => feeding.litres, 'litres'),
    kilograms: number((feeding) => feeding.kilograms, 'kilograms'),
    note: text((feeding) => feeding.note),
  },
  treatments: {
    id: text((treatment) => treatment.id),
    hive: text((treatment, tables) => hiveCode(tables, treatment.colonyId)),
    from_on: day((treatment) => treatment.fromOn),
    to_on: day((treatment) => treatment.toOn),
    product: text((treatment) => treatment.product),
    amount: text((treatment) => treatment.amount),
    reason: text((treatment) => treatment.reason),
    paper: text((treatment) => treatment.paper),
    note: text((treatment) => treatment.note),
  },
  'hive-scores': {
    id: text((score) => score.id),
    hive: text((score, tables) => hiveCode(tables, score.colonyId)),
    trait: choice(STOCK_TRAITS, (score) => score.trait),
    scored_on: day((score) => score.scoredOn),
    score: number((score) => score.score, '1 to 4'),
    note: text((score) => score.note),
  },
  'hive-tests': {
    id: text((test) => test.id),
    hive: text((test, tables) => hiveCode(tables, test.colonyId)),
    kind: choice(STOCK_TESTS, (test) => test.kind),
    tested_on: day((test) => test.testedOn),
    counted: number((test) => test.counted),
    out_of: number((test) => test.outOf),
    hours: number((test) => test.hours, 'hours'),
    note: text((test) => test.note),
  },
};
