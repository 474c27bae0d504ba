import { z } from 'zod';
import { CellsField, CodeField, IdField, IsoDayField, NoteField, SeasonField } from './fields.ts';
import { BUILDER_TYPES, COMBS, METHODS } from './method.ts';
import { STEPS } from './step.ts';

/** One set of queen cells raised together. Its calendar is not stored: it is reckoned from these fields and what was seen. */
export const Batch = z.object({
  id: IdField,
  /** Season and number in it, 26-07. */
  code: CodeField,
  season: SeasonField,
  method: z.enum(METHODS),
  /** The person's own copy of the method, when one was used. */
  methodCopyId: IdField.nullable(),
  comb: z.enum(COMBS).nullable(),
  builderType: z.enum(BUILDER_TYPES),
  breederId: IdField.nullable(),
  builderId: IdField.nullable(),
  /** The step whose day is known, and that day: the fact all forecasts are reckoned from. */
  anchorStep: z.enum(STEPS),
  anchorOn: IsoDayField,
  /** Age of the youngest and oldest larva when given, hours since hatching; null = the method's usual span. */
  larvaAgeFromHours: z.int().min(0).max(96).nullable(),
  larvaAgeToHours: z.int().min(0).max(96).nullable(),
  /** Warmth around the sealed cells, °C, where they are kept in an incubator; null = in a hive. */
  sealedCelsius: z.number().nullable(),
  cellsPlanned: CellsField.nullable(),
  /** A batch for practice or class, which can be left out of comparisons. */
  practice: z.boolean(),
  note: NoteField.nullable(),
  /** One sentence to remember next year. */
  lesson: NoteField.nullable(),
  closedOn: IsoDayField.nullable(),
});
export type Batch = z.infer<typeof Batch>;

/** A bar (or comb edge, or strip) of cells inside a batch. Numbered from 1 in the batch. */
export const Bar = z.object({
  id: IdField,
  batchId: IdField,
  number: z.int().min(1).max(99),
});
export type Bar = z.infer<typeof Bar>;

/**
 * The stages that are counted on a bar. `removed` = taken cells deliberately taken away before sealing (thinned, given
 * away): they are no loss and leave the denominator of sealing.
 */
export const COUNTED_STAGES = ['given', 'taken', 'removed', 'sealed'] as const;
export type CountedStage = (typeof COUNTED_STAGES)[number];

/** One count on one bar. No row = not counted; 0 = counted, and there were none. */
export const Count = z.object({
  id: IdField,
  batchId: IdField,
  barId: IdField,
  stage: z.enum(COUNTED_STAGES),
  cells: CellsField,
  countedOn: IsoDayField,
});
export type Count = z.infer<typeof Count>;

/** That a step of the timetable was done, and when. */
export const StepDone = z.object({
  id: IdField,
  batchId: IdField,
  step: z.enum(STEPS),
  doneOn: IsoDayField,
  note: NoteField.nullable(),
});
export type StepDone = z.infer<typeof StepDone>;

/** The person's own choice of day for an open step. */
export const StepMove = z.object({
  id: IdField,
  batchId: IdField,
  step: z.enum(STEPS),
  movedTo: IsoDayField,
  reason: z.string().trim().max(200),
});
export type StepMove = z.infer<typeof StepMove>;

/** That a job of the timetable will not be done, and why. It is neither done nor late any more. */
export const StepDrop = z.object({
  id: IdField,
  batchId: IdField,
  step: z.enum(STEPS),
  /** The day it was said. */
  droppedOn: IsoDayField,
  reason: z.string().trim().max(200),
});
export type StepDrop = z.infer<typeof StepDrop>;
