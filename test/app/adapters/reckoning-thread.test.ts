// The real thread on the sources themselves: Node runs them as they are.
import { join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { startReckoningThread } from '../../../app/adapters/reckoning-thread.ts';
import { reckonHere } from '../../../main/engine/yield/reckon.ts';

const FILE = join(import.meta.dirname, '../../../app/adapters/reckoning-worker.ts');
const GROUPS = [[{ successes: 20, of: 30 }], [{ successes: 26, of: 30 }]];
let thread = startReckoningThread(FILE);
afterEach(async () => {
  await thread.stop();
  thread = startReckoningThread(FILE);
});

test('gives the very answer that is reckoned here, and keeps it', async () => {
  const answer = await thread.reckon('weigh', { groups: GROUPS });
  expect(answer).toEqual(await reckonHere()('weigh', { groups: GROUPS }));
  expect(await thread.reckon('weigh', { groups: GROUPS.map((group) => [...group]) })).toBe(answer);
});

test('answers each question with its own answer when several wait', async () => {
  const ask = (successes: number) => thread.reckon('weigh', { groups: [[{ successes, of: 30 }]] });
  const [few, many] = await Promise.all([ask(5), ask(25)]);
  expect(few.rates.groups[0]?.mean).toBeLessThan(0.4);
  expect(many.rates.groups[0]?.mean).toBeGreaterThan(0.6);
});

test('a question that cannot be answered fails alone; the next one is answered', async () => {
  const impossible = { groups: null as unknown as [] };
  await expect(thread.reckon('weigh', impossible)).rejects.toThrow();
  const { rates } = await thread.reckon('weigh', { groups: GROUPS });
  expect(rates.groups).toHaveLength(2);
});

test('the newest question is answered first', async () => {
  const order: string[] = [];
  const ask = (name: string, successes: number) =>
    thread.reckon('weigh', { groups: [[{ successes, of: 30 }]] }).then(() => order.push(name));
  await Promise.all([ask('under way', 3), ask('older', 4), ask('newest', 5)]);
  expect(order).toEqual(['under way', 'newest', 'older']);
});

test('a question after a stop begins the thread anew', async () => {
  void thread.reckon('weigh', { groups: [[{ successes: 1, of: 30 }]] });
  await thread.stop();
  expect((await thread.reckon('weigh', { groups: GROUPS })).rates.groups).toHaveLength(2);
});
