import { expect, test } from 'vitest';
import { createSaveLine } from '../../../renderer/client/save-line.ts';

/** A line whose saves and refreshes are told in the order they happen; each save takes a moment, an answer longer. */
function lineOf() {
  const told: string[] = [];
  const moment = (milliseconds = 1) => new Promise<void>((resolve) => setTimeout(resolve, milliseconds));
  const line = createSaveLine(async () => {
    await moment(40);
    told.push('asked anew');
  });
  const add = (name: string, changed = true) =>
    line.add(async () => {
      await moment();
      told.push(name);
      return changed;
    });
  return { told, add, settled: line.settled };
}

test('rows are saved one after the other, and the answers are asked anew once nothing waits', async () => {
  const { told, add, settled } = lineOf();
  for (const name of ['K01', 'K02', 'K03']) void add(name);
  await settled();
  expect(told).toEqual(['K01', 'K02', 'K03', 'asked anew']);
});

test('a refused row at the end keeps no saved row before it from being asked anew', async () => {
  const { told, add, settled } = lineOf();
  void add('K01');
  void add('K02', false);
  await settled();
  expect(told).toEqual(['K01', 'K02', 'asked anew']);
  void add('K03', false);
  await settled();
  expect(told).toEqual(['K01', 'K02', 'asked anew', 'K03']);
});

test('the next row does not wait for the answers', async () => {
  const { told, add, settled } = lineOf();
  await add('K01');
  await add('K02');
  await settled();
  expect(told).toEqual(['K01', 'K02', 'asked anew', 'asked anew']);
});
