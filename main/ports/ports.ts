import type { Day } from '../../shared/kernel/day.ts';
import type { Id } from '../../shared/kernel/id.ts';

/** What `main` asks of the world. The shells hand in the real ones (app/adapters), tests and the demo small fixed ones. */
export interface Clock {
  /** The civil day it is in the yard. */
  today(): Day;
  /** The present instant as ISO 8601 UTC text, for "saved at" marks only; no rule may depend on it. */
  now(): string;
}

export interface Ids {
  next(): Id;
}
