import fc from 'fast-check';
import { expect, test } from 'vitest';
import { promiseStanding } from '../../../../main/engine/queens/promise-standing.ts';
import { QUEEN_PLACES, type QueenPlace } from '../../../../shared/model/queen.ts';

const PROMISED = { promisedTo: 'Ines Berg', promisedOn: '2026-06-01' };
const move = (movedOn: string, place: QueenPlace, goneTo: string | null = null) => ({ movedOn, place, goneTo });

test.each([
  ['she is still here', [move('2026-06-03', 'caged')], 'caged', 'open'],
  ['she was brought to a hive meanwhile', [move('2026-06-03', 'in-hive')], 'in-hive', 'open'],
  ['given to that name, in other capitals', [move('2026-06-05', 'given', ' ines  BERG')], 'given', 'kept'],
  ['sold on the very day', [move('2026-06-01', 'sold', 'Ines Berg')], 'sold', 'kept'],
  ['given, and nobody was named', [move('2026-06-05', 'given')], 'given', 'kept'],
  ['sold to another', [move('2026-06-05', 'sold', 'Ole')], 'sold', 'not-kept'],
  ['she died', [move('2026-06-05', 'dead')], 'dead', 'not-kept'],
  [
    'she was given to that name and came back',
    [move('2026-06-09', 'in-hive'), move('2026-06-05', 'given', 'Ines Berg')],
    'in-hive',
    'kept',
  ],
  [
    'given before the promise, and back',
    [move('2026-05-01', 'given', 'Ole'), move('2026-05-20', 'in-hive')],
    'in-hive',
    'open',
  ],
  [
    'given to that name first, to another later',
    [move('2026-07-01', 'given', 'Ole'), move('2026-06-05', 'given', 'Ines Berg')],
    'given',
    'kept',
  ],
] as const)('%s', (_what, moves, place, standing) => {
  expect(promiseStanding(PROMISED, moves, place)).toBe(standing);
});

test('a queen with others is never still promised, whatever the order of her moves', () => {
  const anyMove = fc.record({
    movedOn: fc.constantFrom('2026-05-20', '2026-06-02', '2026-06-09'),
    place: fc.constantFrom(...QUEEN_PLACES),
    goneTo: fc.constantFrom(null, 'Ines Berg', 'Ole'),
  });
  fc.assert(
    fc.property(fc.array(anyMove, { maxLength: 4 }), fc.constantFrom('given', 'sold', 'dead'), (moves, place) => {
      expect(promiseStanding(PROMISED, moves, place)).not.toBe('open');
    }),
  );
});
