import type { Refusal } from '../../shared/contract/refusal.ts';
import type { Result } from '../../shared/kernel/result.ts';
import type { StepToWrite } from './journal/journal-steps.ts';
import type { Tables } from './workbook.ts';

/** What is done inside one transaction. */
export interface Saving<Value> {
  readonly work: (tables: Tables) => Result<Value, Refusal>;
  /** The name of the step it makes, if it wrote anything; null where the work names its own. */
  readonly step: ((value: Value) => StepToWrite) | null;
  /** The answer when the rows do not fit those that something else has written; null where that is our own mistake. */
  readonly contradicted: (() => Result<Value, Refusal>) | null;
}
