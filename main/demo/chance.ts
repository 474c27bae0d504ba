/**
 * Repeatable chance for the made-up yard: a 32-bit linear congruential generator (multiplier 1664525, increment
 * 1013904223, as in Press et al., Numerical Recipes, from memory). Good enough for a story, for nothing else.
 */
export class Chance {
  #state: number;

  constructor(seed: number) {
    this.#state = seed >>> 0;
  }

  /** 0 up to, not including, 1. */
  next(): number {
    this.#state = (Math.imul(this.#state, 1_664_525) + 1_013_904_223) >>> 0;
    return this.#state / 4_294_967_296;
  }

  happens(share: number): boolean {
    return this.next() < share;
  }

  /** How many of n come through, each by itself with the same share. */
  of(n: number, share: number): number {
    let count = 0;
    for (let index = 0; index < n; index += 1) if (this.happens(share)) count += 1;
    return count;
  }

  /** A share that differs from batch to batch around a mean, held between 5 and 98 in a hundred. */
  around(mean: number, spread: number): number {
    const bell = this.next() + this.next() + this.next() - 1.5;
    return Math.min(0.98, Math.max(0.05, mean + bell * spread));
  }

  pick<Item>(items: readonly Item[]): Item {
    const item = items[Math.floor(this.next() * items.length)];
    if (item === undefined) throw new Error('nothing to pick from');
    return item;
  }
}
