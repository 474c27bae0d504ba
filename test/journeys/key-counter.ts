// Counts keys as design figures do: a chord (Ctrl+K, Shift+L) is one, each letter of a typed text is one.
import type { Page } from 'playwright';

export interface CountedKeys {
  /** Keys pressed since the last `start`. */
  readonly count: number;
  start(): void;
  press(...keys: string[]): Promise<void>;
  type(text: string): Promise<void>;
}

/**
 * Seconds a person needs for so many keys, by the keystroke-level model (Card, Moran & Newell 1980, Communications of the
 * ACM 23(7): 396-410): 0.28 s a key for an average typist who is no typist by trade, 1.35 s for each time of thinking.
 */
export const secondsOfKeys = (keys: number, thoughts: number): number => keys * 0.28 + thoughts * 1.35;

export function countKeys(page: Page): CountedKeys {
  let count = 0;
  return {
    get count() {
      return count;
    },
    start() {
      count = 0;
    },
    async press(...keys) {
      for (const key of keys) {
        count += 1;
        await page.keyboard.press(key);
      }
    },
    async type(text) {
      count += text.length;
      // Slower than a scanner, as a person is.
      await page.keyboard.type(text, { delay: 60 });
    },
  };
}
