import type { z } from 'zod';
import type { DrawnAnswer, DrawnChoice } from '../../../shared/contract/forecast.ts';
import { clopperPearsonInterval, jeffreysInterval } from '../../engine/yield/beta-intervals.ts';
import { jamesStein, jamesSteinArcsine } from '../../engine/yield/james-stein.ts';
import { wilsonInterval } from '../../engine/yield/wilson-interval.ts';
import type { Desk } from '../operation.ts';

/** Of nothing, every share is possible. */
const UNKNOWN = { lower: 0, upper: 1 };

/** For the class: plain shares of made-up batches beside the same drawn towards each other, by hand and by the model. */
export async function previewDrawn({ reckon }: Desk, { rows }: z.infer<typeof DrawnChoice>): Promise<DrawnAnswer> {
  const { rates } = await reckon('weigh', { groups: rows.map((row) => [row]) });
  const [first] = rows;
  const even = first !== undefined && rows.every(({ of }) => of === first.of);
  const successes = rows.map((row) => row.successes);
  const byHand = even ? jamesStein(successes, first.of) : null;
  const evened = even ? jamesSteinArcsine(successes, first.of) : null;
  return {
    rows: rows.map((row, index): DrawnAnswer['rows'][number] => {
      const { mean = 0, lower = 0, upper = 1 } = rates.groups[index] ?? {};
      return {
        plain: row.successes / row.of,
        byHand: byHand?.rates[index] ?? null,
        byHandEvened: evened?.rates[index] ?? null,
        model: { mean, lower, upper },
        others: {
          wilson: wilsonInterval(row.successes, row.of) ?? UNKNOWN,
          jeffreys: jeffreysInterval(row.successes, row.of) ?? UNKNOWN,
          exact: clopperPearsonInterval(row.successes, row.of) ?? UNKNOWN,
        },
      };
    }),
    kept: byHand?.kept ?? null,
  };
}
