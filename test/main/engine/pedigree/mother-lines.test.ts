import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { HiveStay } from '../../../../main/engine/pedigree/hive-stays.ts';
import {
  isOwnAncestor,
  type LineNode,
  motherLines,
  motherOf,
  type PedigreeQueen,
} from '../../../../main/engine/pedigree/mother-lines.ts';
import { dayOfIso } from '../../../../shared/kernel/day.ts';

const queen = (id: string, changes: Partial<PedigreeQueen> = {}): PedigreeQueen => ({
  id,
  motherId: null,
  breederId: null,
  larvaeOn: null,
  ...changes,
});
const stay = (queenId: string, from: string, until: string | null): HiveStay => ({
  queenId,
  colonyId: 'h3',
  from: dayOfIso(from),
  until: until === null ? null : dayOfIso(until),
});
const larvae = (id: string, on: string) => queen(id, { breederId: 'h3', larvaeOn: dayOfIso(on) });
const shape = (nodes: readonly LineNode[]): unknown =>
  nodes.map(({ id, daughters }) => (daughters.length === 0 ? id : [id, shape(daughters)]));

describe('her mother', () => {
  const stays = [stay('a', '2024-08-12', '2025-08-01')];

  test('is the queen that headed the breeder when larvae were given, else that hive', () => {
    expect(motherOf(larvae('x', '2025-05-20'), stays)).toEqual({ kind: 'queen', id: 'a' });
    expect(motherOf(larvae('x', '2024-08-11'), stays)).toEqual({ kind: 'hive', id: 'h3' });
    expect(motherOf(larvae('x', '2025-08-01'), stays)).toEqual({ kind: 'hive', id: 'h3' });
    expect(motherOf(queen('x', { breederId: 'h3' }), stays)).toEqual({ kind: 'hive', id: 'h3' });
    expect(motherOf(queen('x'), stays)).toBeNull();
  });

  test('is the one the person named, whatever the batch says', () => {
    expect(motherOf({ ...larvae('x', '2025-05-20'), motherId: 'z' }, stays)).toEqual({ kind: 'queen', id: 'z' });
  });

  test('is never herself, even if she was brought to her breeder hive too early by the record', () => {
    expect(motherOf(larvae('a', '2025-05-20'), stays)).toEqual({ kind: 'hive', id: 'h3' });
  });
});

test('three generations stand under each other', () => {
  const stays = [stay('24-1', '2024-08-12', null)];
  const queens = [
    larvae('24-1', '2024-05-07'),
    larvae('25-1', '2025-05-13'),
    queen('26-1', { motherId: '25-1' }),
    queen('bought'),
  ];
  expect(shape(motherLines(queens, stays))).toEqual([['h3', [['24-1', [['25-1', ['26-1']]]]]], 'bought']);
});

test('she is her own ancestor through any number of generations', () => {
  const family = [queen('a'), queen('b', { motherId: 'a' }), queen('c', { motherId: 'b' })];
  const queens = new Map(family.map((one) => [one.id, one]));
  expect(isOwnAncestor('a', 'c', queens, [])).toBe(true);
  expect(isOwnAncestor('a', 'a', queens, [])).toBe(true);
  expect(isOwnAncestor('c', 'a', queens, [])).toBe(false);
});

test('whatever a file holds, also circles: every queen stands in the forest once', () => {
  const ids = ['a', 'b', 'c', 'd', 'e'];
  const anyQueens = fc.tuple(...ids.map(() => fc.option(fc.constantFrom(...ids, 'gone'))));
  const idsIn = (nodes: readonly LineNode[]): readonly string[] =>
    nodes.flatMap((node) => [...(node.kind === 'queen' ? [node.id] : []), ...idsIn(node.daughters)]);
  fc.assert(
    fc.property(anyQueens, (mothers) => {
      const queens = ids.map((id, index) => queen(id, { motherId: mothers[index] ?? null }));
      expect(idsIn(motherLines(queens, [])).toSorted()).toEqual(ids);
    }),
  );
});
