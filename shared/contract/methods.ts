import { z } from 'zod';
import { IdField } from '../model/fields.ts';
import { COMBS, METHODS, type Method } from '../model/method.ts';
import { MethodCopy } from '../model/method-copy.ts';
import type { Step, StepKind } from '../model/step.ts';
import type { OwnWords } from './timetable.ts';

/** A built-in method, or the person's own copy of one. */
export const GetMethod = z.object({
  method: z.enum(METHODS),
  comb: z.enum(COMBS).nullable(),
  copyId: IdField.nullable(),
});
export const SaveMethodCopy = MethodCopy;

export interface DaysOfStep {
  readonly earliest: number;
  readonly expected: number;
  readonly latest: number;
}

/** One step of a method in days after the larvae are given: as built in, and as the copy has it. */
export interface MethodStep {
  readonly step: Step;
  readonly kind: StepKind;
  readonly builtIn: DaysOfStep;
  readonly own: DaysOfStep;
  readonly changed: boolean;
  readonly source: string;
  /** What the copy calls the step, and its note; null = as built in. */
  readonly words: OwnWords;
}

export interface MethodView {
  readonly method: Method;
  readonly copy: MethodCopy | null;
  readonly steps: readonly MethodStep[];
  readonly copies: readonly MethodCopy[];
}

export type MethodsRefusal = { readonly kind: 'method-name-in-use'; readonly field: 'name'; readonly name: string };
