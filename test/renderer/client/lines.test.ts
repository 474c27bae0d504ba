import { expect, test } from 'vitest';
import { atMost } from '../../../renderer/client/lines.ts';

/** Calls that end when they are told to; `begun` in the order they began. */
function calls(limit: number) {
  const line = atMost(limit);
  const begun: string[] = [];
  const ends = new Map<string, PromiseWithResolvers<string>>();
  const ask = (name: string, signal?: AbortSignal) => {
    const end = Promise.withResolvers<string>();
    ends.set(name, end);
    return line(() => {
      begun.push(name);
      return end.promise;
    }, signal);
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
  const answers = ['a', 'b', 'c', 'd'].map((name) => ask(name));
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

test('a call nobody waits for any more is never made, and keeps no place', async () => {
  const { begun, ask, turn, end } = calls(1);
  const first = ask('a');
  const leaving = new AbortController();
  const given = ask('b', leaving.signal);
  const third = ask('c');
  leaving.abort(new Error('the page was left'));
  await expect(given).rejects.toThrow('the page was left');
  end('a');
  await first;
  await turn();
  expect(begun).toEqual(['a', 'c']);
  end('c');
  await third;
  const fourth = ask('d');
  await turn();
  expect(begun).toEqual(['a', 'c', 'd']);
  end('d');
  await fourth;
});
