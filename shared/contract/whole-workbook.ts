import { z } from 'zod';
import { Bar, Batch, Count, StepDone, StepDrop, StepMove } from '../model/batch.ts';
import { CalendarExport } from '../model/calendar-export.ts';
import { Colony, ColonyRole } from '../model/colony.ts';
import { Feeding } from '../model/feeding.ts';
import { IsoDayField, NameField } from '../model/fields.ts';
import { FollowUp } from '../model/follow-up.ts';
import { ColonyMove, Treatment } from '../model/hive-record.ts';
import { LabelPrint } from '../model/label-print.ts';
import { BoxLook, HiveLook } from '../model/look.ts';
import { Loss } from '../model/loss.ts';
import { MatingBox, Placement } from '../model/mating-box.ts';
import { MethodCopy } from '../model/method-copy.ts';
import { Observation } from '../model/observation.ts';
import { Queen } from '../model/queen.ts';
import { QueenPromise } from '../model/queen-promise.ts';
import { QueenFeedback, QueenMove } from '../model/queen-story.ts';
import { StockScore, StockTest } from '../model/stock.ts';
import { BatchTally } from '../model/tally.ts';
import { WeatherDay } from '../model/weather.ts';
import { Wish } from '../model/wish.ts';
import { Yard } from '../model/yard.ts';

/** Every kind of record in the order in which rows can be put in: none points to a later one. */
export const WHOLE_TABLES = {
  yards: Yard,
  colonies: Colony,
  colonyRoles: ColonyRole,
  methodCopies: MethodCopy,
  batches: Batch,
  bars: Bar,
  counts: Count,
  stepsDone: StepDone,
  stepMoves: StepMove,
  stepDrops: StepDrop,
  losses: Loss,
  observations: Observation,
  boxes: MatingBox,
  placements: Placement,
  boxLooks: BoxLook,
  hiveLooks: HiveLook,
  queens: Queen,
  queenMoves: QueenMove,
  queenFeedback: QueenFeedback,
  followUps: FollowUp,
  stockScores: StockScore,
  stockTests: StockTest,
  feedings: Feeding,
  treatments: Treatment,
  colonyMoves: ColonyMove,
  labelPrints: LabelPrint,
  calendarExports: CalendarExport,
  weather: WeatherDay,
  wishes: Wish,
  queenPromises: QueenPromise,
} as const;

export const WHOLE_FORMAT = 'ripecell-workbook';
/** Raised when a reader of the old form could misread the new one; new tables and fields do not raise it. */
export const WHOLE_VERSION = 1;
/** Rows of one table; a workbook of many years holds some ten thousand. */
const MOST_ROWS = 200_000;

/** Any name but those by which every object could be reached. */
const SettingKey = z
  .string()
  .min(1)
  .max(300)
  .regex(/^(?!__proto__$|constructor$|prototype$)/);

const rowsOf = <Row extends z.ZodType>(row: Row) => z.array(row).max(MOST_ROWS).default([]);

/** A whole workbook as one JSON text: everything a person has typed, and the sums kept beside it. */
export const WholeWorkbook = z.object({
  format: z.literal(WHOLE_FORMAT),
  version: z.literal(WHOLE_VERSION),
  name: NameField,
  exportedOn: IsoDayField,
  tables: z.object({
    yards: rowsOf(Yard),
    colonies: rowsOf(Colony),
    colonyRoles: rowsOf(ColonyRole),
    methodCopies: rowsOf(MethodCopy),
    batches: rowsOf(Batch),
    bars: rowsOf(Bar),
    counts: rowsOf(Count),
    stepsDone: rowsOf(StepDone),
    stepMoves: rowsOf(StepMove),
    stepDrops: rowsOf(StepDrop),
    losses: rowsOf(Loss),
    observations: rowsOf(Observation),
    boxes: rowsOf(MatingBox),
    placements: rowsOf(Placement),
    boxLooks: rowsOf(BoxLook),
    hiveLooks: rowsOf(HiveLook),
    queens: rowsOf(Queen),
    queenMoves: rowsOf(QueenMove),
    queenFeedback: rowsOf(QueenFeedback),
    followUps: rowsOf(FollowUp),
    stockScores: rowsOf(StockScore),
    stockTests: rowsOf(StockTest),
    feedings: rowsOf(Feeding),
    treatments: rowsOf(Treatment),
    colonyMoves: rowsOf(ColonyMove),
    labelPrints: rowsOf(LabelPrint),
    calendarExports: rowsOf(CalendarExport),
    weather: rowsOf(WeatherDay),
    wishes: rowsOf(Wish),
    queenPromises: rowsOf(QueenPromise),
    tallies: rowsOf(BatchTally),
  } satisfies { readonly [Key in keyof typeof WHOLE_TABLES | 'tallies']: z.ZodType }),
  /** Settings by name, as the workbook keeps them. */
  settings: z.record(SettingKey, z.json()),
});
export type WholeWorkbook = z.infer<typeof WholeWorkbook>;

/** The published description of that file, JSON Schema draft 2020-12. */
export function wholeWorkbookSchema(): object {
  return z.toJSONSchema(WholeWorkbook, {
    io: 'input',
    override: ({ zodSchema, jsonSchema }) => {
      if (zodSchema === IsoDayField) jsonSchema.format = 'date';
    },
  });
}
