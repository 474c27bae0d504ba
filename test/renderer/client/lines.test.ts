import { expect, test } from 'vitest';
import { atMost } from '../../../renderer/client/lines.ts';

/** Calls that end when they are told to; `begun` in the order they began. */
function calls(limit: number) {
  const line = atMost(limit);
  const begun: string[] = [];
  const ends = new Map<string, PromiseWithResolvers<string>>();
  const ask = (name: string) => {
    const end = Promise.withResolvers<string>();
    ends.set(name, end);
    return line(() => {
      begun.push(name);
      return end.promise;
    });
  };
  const turn = () => new Promise((resolve) => setImmediate(resolve));
  return {
    begun,
    ask,
    turn,
    end: (name: string) => ends.get(name)?.resolve(`${name} answered`),
    fail: (name: string) => ends.get(name)?.reject(new Error(name)),
  };
}

test('no more than the limit are on their way, and the newest of those that wait goes first', async () => {
  const { begun, ask, turn, end } = calls(2);
  const answers = ['a', 'b', 'c', 'd'].map(ask);
  await turn();
  expect(begun).toEqual(['a', 'b']);
  end('a');
  await turn();
  expect(begun).toEqual(['a', 'b', 'd']);
  for (const name of ['b', 'c', 'd']) end(name);
  expect(await Promise.all(answers)).toEqual(['a answered', 'b answered', 'c answered', 'd answered']);
});

test('a call that fails gives its place on, and the place of the last is free again', async () => {
  const { begun, ask, turn, end, fail } = calls(1);
  const first = ask('a');
  const second = ask('b');
  fail('a');
  await expect(first).rejects.toThrow('a');
  await turn();
  expect(begun).toEqual(['a', 'b']);
  end('b');
  await second;
  const third = ask('c');
  await turn();
  expect(begun).toEqual(['a', 'b', 'c']);
  end('c');
  await third;
});
