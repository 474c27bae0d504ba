import type { BuilderType, Method } from '../../../model/method.ts';

/** What is said about one step: to the person at the hive and to a class. */
export interface StepWords {
  readonly title: string;
  readonly what: string;
  readonly why: string;
  readonly caution: string;
}

/** The words of a step past its title, and what a method or a way of arranging the builder says differently. */
export interface StepText extends Omit<StepWords, 'title'> {
  readonly byMethod?: Partial<Record<Method, Partial<StepWords>>>;
  readonly byBuilder?: Partial<Record<BuilderType, Partial<StepWords>>>;
}
