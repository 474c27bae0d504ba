import { Chance } from '../../main/demo/chance.ts';
import { addDays, dayOfIso, isoOfDay } from '../../shared/kernel/day.ts';

/** Chance with the draws a person's typing needs, and without the pattern that a walk of many short draws would show. */
export class Draw extends Chance {
  #bits: number;

  constructor(seed: number) {
    super(seed);
    this.#bits = Math.imul(seed + 1, 2_654_435_761) || 1;
  }

  /** Shifts of 13, 17 and 5 (Marsaglia 2003, Xorshift RNGs, J. Stat. Softw. 8(14)). */
  override next(): number {
    this.#bits ^= this.#bits << 13;
    this.#bits ^= this.#bits >>> 17;
    this.#bits ^= this.#bits << 5;
    return (this.#bits >>> 0) / 4_294_967_296;
  }

  below(most: number): number {
    return Math.floor(this.next() * most);
  }
  from<Value>(values: readonly Value[]): Value | null {
    return values[this.below(values.length)] ?? null;
  }
  count(most: number): number | null {
    return this.happens(0.2) ? null : this.below(most);
  }
  day(first: string, span: number): string {
    return isoOfDay(addDays(dayOfIso(first), this.below(span)));
  }
  note(): string | null {
    return this.happens(0.5) ? null : `note ${this.below(5)} “ä” \\ '`;
  }
}
