import type { Command } from '../../shared/contract/shell.ts';

/** Commands chosen in the menu, waiting for the page to ask for the next one; the page asks again after each. */
export class CommandLine {
  #chosen: Command[] = [];
  #waiting: ((command: Command) => void) | null = null;

  choose(command: Command): void {
    if (this.#waiting) {
      const answer = this.#waiting;
      this.#waiting = null;
      answer(command);
    } else this.#chosen.push(command);
  }

  /** A page that was loaded anew asks again; the older question is left unanswered. */
  next(): Promise<Command> {
    const first = this.#chosen.shift();
    if (first) return Promise.resolve(first);
    return new Promise((resolve) => {
      this.#waiting = resolve;
    });
  }
}
