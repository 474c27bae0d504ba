import { expect, test } from 'vitest';
import { createSaveLine } from '../../../renderer/client/save-line.ts';

/** A line whose saves and refreshes are told in the order they happen; answers come when they are let go. */
function lineOf() {
  const told: string[] = [];
  const held = Promise.withResolvers<void>();
  const line = createSaveLine(async () => {
    told.push('asked anew');
    await held.promise;
    told.push('answered');
  });
  const add = (name: string, changed = true) =>
    line.add(async () => {
      await Promise.resolve();
      told.push(name);
      return changed;
    });
  return { told, add, letGo: held.resolve, settled: line.settled };
}

test('rows are saved one after the other, and the answers are asked anew once nothing waits', async () => {
  const { told, add, letGo, settled } = lineOf();
  letGo();
  for (const name of ['K01', 'K02', 'K03']) void add(name);
  await settled();
  expect(told).toEqual(['K01', 'K02', 'K03', 'asked anew', 'answered']);
});

test('a refused row at the end keeps no saved row before it from being asked anew', async () => {
  const { told, add, letGo, settled } = lineOf();
  letGo();
  void add('K01');
  void add('K02', false);
  await settled();
  expect(told).toEqual(['K01', 'K02', 'asked anew', 'answered']);
  void add('K03', false);
  await settled();
  expect(told.at(-1)).toBe('K03');
});

test('the next row does not wait for the answers', async () => {
  const { told, add, letGo, settled } = lineOf();
  await add('K01');
  await add('K02');
  expect(told).toEqual(['K01', 'asked anew', 'K02', 'asked anew']);
  letGo();
  await settled();
  expect(told.slice(4)).toEqual(['answered', 'answered']);
});
