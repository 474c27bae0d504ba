import type { ChangeWords } from '../../model/journal.ts';
import { shortDay } from '../day-text.ts';
import { celsiusText } from '../degrees.ts';
import { followUps } from './follow-ups.ts';
import { lookWords } from './looks.ts';
import { losses } from './losses.ts';
import { PLACEMENT_ENDS } from './placement-ends.ts';
import { printedPapers } from './printed-papers.ts';
import { QUEEN_PLACES } from './queen-places.ts';
import { SIGHTING_WORDS } from './sightings.ts';
import { STEP_TITLES } from './step-titles.ts';

type WordsOf<Did, Words = ChangeWords> = Words extends { readonly did: infer One }
  ? Did extends One
    ? Words
    : never
  : never;
type Sentences = { readonly [Did in ChangeWords['did']]: (words: WordsOf<Did>) => string };

const bar = (number: number | null) => (number === null ? 'a bar' : `bar ${number}`);
const sighting = (what: keyof typeof SIGHTING_WORDS | null) =>
  what === null ? 'a sighting' : SIGHTING_WORDS[what].name;

const TAKEN_IN = {
  hives: ['hive', 'hives'],
  boxes: ['box', 'boxes'],
  queens: ['queen', 'queens'],
  counts: ['batch', 'batches'],
  weather: ['day of weather', 'days of weather'],
} as const;

/** What a change did, short enough for a button: "K07 laying". A change without words does not compile. */
export const CHANGES: Sentences = {
  'start-batch': ({ batch }) => `Start batch ${batch}`,
  'edit-batch': ({ batch }) => `Notes on ${batch}`,
  'close-batch': ({ batch }) => `Close ${batch}`,
  'reopen-batch': ({ batch }) => `Open ${batch} again`,
  'remove-batch': ({ batch, queens: n, hives = [] }) =>
    `Batch ${batch} taken out${hives.length === 0 ? '' : ` with ${hives.length === 1 ? 'hive' : 'hives'} ${hives.join(', ')}`}${n === 0 ? '' : n === 1 ? ', 1 queen stays' : `, ${n} queens stay`}`,
  'print-labels': ({ batch }) => `Labels of ${batch} noted as printed`,
  'print-yard-sheet': ({ on }) => `Yard sheet for ${shortDay(on)} noted as printed`,
  'print-paper': ({ paper, name, year }) => `${printedPapers.names[paper](name, year)} noted as printed`,
  'add-bar': ({ batch, bar: number }) => `Add ${bar(number)} to ${batch}`,
  'record-bar-counts': ({ batch, bar: number }) => `Counts of ${batch}, ${bar(number)}`,
  'record-loss': ({ batch, stage, reason, cells }) =>
    `${batch}, ${losses.stages[stage]}: ${losses.reasons[reason]} ${cells === 0 ? 'taken back' : cells}`,
  'give-as-planned': ({ batch }) => `Cells of ${batch} given as planned`,
  'mark-step': ({ batch, step }) => `${batch}, “${STEP_TITLES[step]}” done`,
  'unmark-step': ({ batch, step }) => `${batch}, “${STEP_TITLES[step]}” open again`,
  'move-step': ({ batch, step }) => `${batch}, “${STEP_TITLES[step]}” moved`,
  'drop-step': ({ batch, step }) => `${batch}, “${STEP_TITLES[step]}” will not be done`,
  'take-up-step': ({ batch, step }) => `${batch}, “${STEP_TITLES[step]}” taken up again`,
  'record-observation': ({ batch, what }) => `${batch}, ${sighting(what)}`,
  'remove-observation': ({ batch, what }) => `${batch}, not seen after all: ${sighting(what)}`,
  'set-warmth': ({ batch, celsius }) =>
    celsius === null ? `Sealed cells of ${batch} in a hive` : `Sealed cells of ${batch} at ${celsiusText(celsius)}`,
  'save-weather': ({ on }) => `Weather of ${shortDay(on)}`,
  'save-wish': ({ forWhom }) => `Wish ${forWhom === null ? 'for own hives' : `of ${forWhom}`}`,
  'remove-wish': ({ forWhom }) => `Wish ${forWhom === null ? 'for own hives' : `of ${forWhom}`} taken out`,
  'add-boxes': ({ boxes: codes }) => `Add boxes ${codes}`,
  'place-cells': ({ batch, boxes: codes }) => `Cells of ${batch} into ${codes}`,
  'take-errand': ({ from, looks }) => `Take in ${looks === 1 ? '1 look' : `${looks} looks`} from “${from}”`,
  'record-look': ({ box, result, queen }) =>
    `${box} ${lookWords[result].name}${queen === null ? '' : `, queen ${queen}`}`,
  'remove-look': ({ box, on }) => `${box}, look of ${shortDay(on)} taken out`,
  'end-placement': ({ box, reason }) => `${box} freed, ${PLACEMENT_ENDS[reason]}`,
  'retire-box': ({ box }) => `${box} taken out of use`,
  'save-yard': ({ yard }) => `Yard ${yard}`,
  'save-hive': ({ hive }) => `Hive ${hive}`,
  'record-score': ({ hive }) => `Score of ${hive}`,
  'record-test': ({ hive }) => `Test of ${hive}`,
  'record-treatment': ({ hive }) => `Treatment of ${hive}`,
  'move-hive': ({ hive }) => `Hive ${hive} moved`,
  'set-roles': ({ hive, season }) => `Role of ${hive} in ${season}`,
  'record-hive-look': ({ hive }) => `Look into ${hive}`,
  'remove-hive-look': ({ hive, on }) => `${hive}, look of ${shortDay(on)} taken out`,
  'record-feeding': ({ places, on }) => `Fed on ${shortDay(on)}: ${places}`,
  'remove-feeding': ({ places, on }) => `Not fed on ${shortDay(on)} after all: ${places}`,
  'save-queen': ({ queen }) => `Queen ${queen}`,
  'promise-queen': ({ queen, to }) => `Queen ${queen} promised to ${to}`,
  'take-back-promise': ({ queen, to }) => `Promise of queen ${queen} to ${to} taken back`,
  'record-feedback': ({ queen }) => `What was told of queen ${queen}`,
  'move-queen': ({ queen, place }) => `Queen ${queen} ${QUEEN_PLACES[place]}`,
  'save-box': ({ box }) => `Particulars of ${box}`,
  'plan-look': ({ box }) => `Another look into ${box} planned`,
  'answer-follow-up': ({ what, who }) => `${followUps.what[what]} ${who}`,
  'save-method-copy': ({ method }) => `Method ${method}`,
  'save-settings': () => 'Settings',
  'take-in-table': ({ what, rows }) => `Table taken in, ${rows} ${TAKEN_IN[what][rows === 1 ? 0 : 1]}`,
  'take-in-workbook': ({ name }) => `File of everything of “${name}” taken in`,
  'begin-workbook': () => 'The workbook was begun',
  'build-demo': () => 'The invented yard was set up',
  other: () => 'A change',
};

/** A file that a later program wrote may hold kinds of change that this one has no words for. */
export function changeSentence(words: ChangeWords): string {
  const sentence = CHANGES[words.did] as ((words: ChangeWords) => string) | undefined;
  return sentence ? sentence(words) : CHANGES.other({ did: 'other' });
}

interface RowWords {
  readonly name: string;
  readonly fields: Readonly<Record<string, string>>;
}

/** Names of rows and their fields as they stand in the file, for the history of a record. */
export const ROW_WORDS: Readonly<Record<string, RowWords>> = {
  batch: {
    name: 'Batch',
    fields: {
      code: 'Code',
      season: 'Season',
      method: 'Method',
      method_copy_id: 'Own method',
      comb: 'Comb',
      builder_type: 'Builder is',
      breeder_id: 'Breeder',
      builder_id: 'Builder',
      anchor_step: 'Known step',
      anchor_on: 'Its day',
      larva_age_from_hours: 'Youngest larva, hours',
      larva_age_to_hours: 'Oldest larva, hours',
      sealed_celsius: 'Warmth of the sealed cells, °C',
      cells_planned: 'Cells planned',
      practice: 'For practice',
      note: 'Note',
      lesson: 'To remember',
      closed_on: 'Closed on',
    },
  },
  bar: { name: 'Bar', fields: { batch_id: 'Batch', number: 'Bar' } },
  count: {
    name: 'Count',
    fields: { batch_id: 'Batch', bar_id: 'Bar', stage: 'Stage', cells: 'Cells', counted_on: 'Counted on' },
  },
  step_done: { name: 'Step done', fields: { batch_id: 'Batch', step: 'Step', done_on: 'Done on', note: 'Note' } },
  step_move: {
    name: 'Step moved',
    fields: { batch_id: 'Batch', step: 'Step', moved_to: 'Moved to', reason: 'Reason' },
  },
  step_drop: {
    name: 'Step that will not be done',
    fields: { batch_id: 'Batch', step: 'Step', dropped_on: 'Said on', reason: 'Reason' },
  },
  loss: {
    name: 'Loss',
    fields: { batch_id: 'Batch', stage: 'Stage', reason: 'Reason', cells: 'Cells' },
  },
  observation: {
    name: 'Seen',
    fields: {
      batch_id: 'Batch',
      what: 'What',
      seen_on: 'Seen on',
      from_hours: 'Youngest, hours',
      to_hours: 'Oldest, hours',
      note: 'Note',
    },
  },
  mating_box: {
    name: 'Box',
    fields: {
      code: 'Code',
      yard_id: 'Yard',
      row: 'Row',
      walk_order: 'Place in the walk',
      box_type: 'Type',
      note: 'Note',
      retired_on: 'Out of use since',
    },
  },
  placement: {
    name: 'Cell in the box',
    fields: {
      box_id: 'Box',
      batch_id: 'Batch',
      bar_id: 'Bar',
      placed_on: 'Put in on',
      ended_on: 'Freed on',
      end_reason: 'Because',
    },
  },
  box_look: {
    name: 'Look',
    fields: {
      box_id: 'Box',
      placement_id: 'Cell of',
      looked_on: 'Day',
      result: 'Result',
      strength: 'Strength',
      food: 'Food',
      note: 'Note',
    },
  },
  queen: {
    name: 'Queen',
    fields: {
      number: 'Number',
      born_in: 'Born in',
      placement_id: 'Cell of',
      batch_id: 'Batch',
      breeder_id: 'Breeder',
      mother_id: 'Mother',
      mother_line: 'Mother line',
      marked_on: 'Marked on',
      first_eggs_on: 'First eggs on',
      proved_on: 'Proved on',
      place: 'Now',
      box_id: 'Box',
      colony_id: 'Hive',
      gone_to: 'To whom',
      note: 'Note',
    },
  },
  queen_move: {
    name: 'Where she went',
    fields: {
      queen_id: 'Queen',
      moved_on: 'Day',
      place: 'Where',
      colony_id: 'Hive',
      gone_to: 'To whom',
      way: 'How',
      price: 'Price',
      note: 'Note',
    },
  },
  queen_promise: {
    name: 'Promise',
    fields: {
      queen_id: 'Queen',
      promised_on: 'Promised on',
      promised_to: 'Promised to',
      wanted_on: 'By when',
      note: 'Note',
    },
  },
  queen_feedback: {
    name: 'What was told of her',
    fields: { queen_id: 'Queen', told_on: 'Heard on', told_by: 'From whom', outcome: 'How she does', note: 'Note' },
  },
  follow_up: {
    name: 'Check',
    fields: {
      what: 'What',
      due_on: 'Due on',
      latest_on: 'At the latest on',
      queen_id: 'Queen',
      box_id: 'Box',
      colony_id: 'Hive',
      done_on: 'Done on',
      answer: 'Answer',
      note: 'Note',
    },
  },
  stock_score: {
    name: 'Score',
    fields: { colony_id: 'Hive', trait: 'Trait', scored_on: 'Day', score: 'Score', note: 'Note' },
  },
  stock_test: {
    name: 'Test',
    fields: {
      colony_id: 'Hive',
      kind: 'Kind',
      tested_on: 'Day',
      counted: 'Counted',
      out_of: 'Out of',
      hours: 'Hours',
      note: 'Note',
    },
  },
  feeding: {
    name: 'Feeding',
    fields: {
      colony_id: 'Hive',
      box_id: 'Box',
      fed_on: 'Day',
      feed: 'Feed',
      own_feed: 'What it is',
      litres: 'Litres',
      kilograms: 'Kilograms',
      note: 'Note',
    },
  },
  treatment: {
    name: 'Treatment',
    fields: {
      colony_id: 'Hive',
      from_on: 'From',
      to_on: 'Until',
      product: 'Product',
      amount: 'Amount',
      reason: 'Because of',
      paper: 'Paper',
      note: 'Note',
    },
  },
  colony_move: {
    name: 'Move',
    fields: {
      colony_id: 'Hive',
      moved_on: 'Day',
      from_yard_id: 'From yard',
      to_yard_id: 'To yard',
      place: 'Place',
      paper: 'Paper',
      note: 'Note',
    },
  },
  colony: {
    name: 'Hive',
    fields: {
      code: 'Code',
      name: 'Name',
      yard_id: 'Yard',
      place: 'Place',
      mother_line: 'Mother line',
      note: 'Note',
      ended_on: 'Ended on',
    },
  },
  weather_day: {
    name: 'Weather',
    fields: {
      day: 'Day',
      max_celsius: 'Highest temperature, °C',
      wind_kmh: 'Wind, km/h',
      rain: 'Rain',
      flying_hours: 'Good flying hours',
    },
  },
  wish: {
    name: 'Wish',
    fields: {
      for_whom: 'Who wants them',
      queens: 'Queens',
      wanted_on: 'By when',
      settled_on: 'Settled on',
      note: 'Note',
    },
  },
  colony_role: { name: 'Role', fields: { colony_id: 'Hive', season: 'Season', role: 'Role' } },
  hive_look: {
    name: 'Look',
    fields: { colony_id: 'Hive', looked_on: 'Day', strength: 'Strength', food: 'Food', note: 'What was seen' },
  },
};

export const history = {
  title: 'History',
  line: 'Every change of this workbook, the latest first. Nothing is ever taken out of it: an undo is a line of its own.',
  empty: 'Nothing was changed yet.',
  columns: { when: 'When', what: 'What was done', state: 'Now' },
  takenBack: 'taken back',
  undo: 'Undo',
  redo: 'Redo',
  undoThat: (step: string) => `Undo: ${step}`,
  redoThat: (step: string) => `Redo: ${step}`,
  happened: (step: string) => `${step}.`,
  undone: (step: string) => `Undone: ${step}.`,
  doneAgain: (step: string) => `Done again: ${step}.`,
  undoFrom: 'Undo from here on',
  undoFromRead: (step: string) => `Undo from here on: ${step}`,
  undoneLine: (step: string) => `Undone: ${step}`,
  doneAgainLine: (step: string) => `Done again: ${step}`,
  older: 'Show older ones',
  newer: 'Show newer ones',
  nothing: 'nothing',
  yes: 'yes',
  no: 'no',
  /** On the page of a batch, box or hive. */
  ofThis: 'History',
  ofThisEmpty: 'Nothing was changed here since the history began.',
  added: 'added',
  removed: 'removed',
  fromTo: (old: string, fresh: string) => `${old} → ${fresh}`,
} as const;
