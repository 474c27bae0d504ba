import type { Failure } from './vector.ts';

/** Compares two numbers by the vector's absolute tolerance. */
export function compareNumber(
  what: string,
  got: number | undefined,
  expected: number,
  tolerance: number,
): readonly Failure[] {
  if (got !== undefined && Math.abs(got - expected) <= tolerance) return [];
  return [`${what} is ${got}, expected ${expected} within ${tolerance}`];
}
