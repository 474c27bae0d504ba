/** One line that a bench prints: what was measured, against what it should be. */
export interface Goal {
  readonly id: string;
  readonly what: string;
  readonly value: number;
  readonly goal: string;
  readonly ok: boolean;
}
