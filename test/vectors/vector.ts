/** One check value: what goes in, what must come out, and where the figure is from. */
export interface Vector {
  readonly name: string;
  readonly kind: string;
  readonly source: string;
  readonly input: unknown;
  readonly expected: unknown;
  readonly toleranceHours?: number;
  readonly tolerance?: number;
}

/** What is wrong, in one line; an empty list means the vector passes. */
export type Failure = string;

/** Every kind of vector runs the very function the window uses. */
export type KindTable = Readonly<Record<string, (vector: Vector) => readonly Failure[]>>;
