import { expect, test } from 'vitest';
import { type KinHive, kinshipOf, relationOf } from '../../../../main/engine/pedigree/kinship.ts';

const hive = (colonyId: string, changes: Partial<KinHive> = {}): KinHive => ({
  colonyId,
  queenId: null,
  mother: null,
  line: null,
  ...changes,
});
const daughterOf = (id: string) => ({ mother: { kind: 'queen', id } as const });

// Daughters of one mother are half sisters at least, coancestry 1/8; mother and daughter 1/4 (path counting by hand).
test.each([
  ['the same hive', hive('a', { line: 'Anna' }), hive('a', { line: 'Anna' }), 'same-hive'],
  ['her mother raises the drones', hive('a', daughterOf('m')), hive('b', { queenId: 'm' }), 'mother-daughter'],
  ['her daughter raises the drones', hive('a', { queenId: 'm' }), hive('b', daughterOf('m')), 'mother-daughter'],
  ['the hive her larva came from', hive('a', { mother: { kind: 'hive', id: 'b' } }), hive('b'), 'mother-daughter'],
  ['one mother', hive('a', daughterOf('m')), hive('b', daughterOf('m')), 'sisters'],
  ['one line in words', hive('a', { line: 'Anna ' }), hive('b', { line: 'anna' }), 'same-line'],
  ['other lines', hive('a', { line: 'Anna' }), hive('b', { line: 'Berta' }), null],
  ['nothing known', hive('a'), hive('b'), null],
  ['a hive and a queen of one id', hive('a', { mother: { kind: 'hive', id: 'x' } }), hive('b', daughterOf('x')), null],
  ['no line at all', hive('a', { line: '' }), hive('b', { line: '' }), null],
] as const)('%s', (_what, breeder, drones, kinship) => {
  expect(kinshipOf(breeder, drones)).toBe(kinship);
});

test.each([
  ['her mother', hive('a', daughterOf('m')), hive('b', { queenId: 'm' }), 'mother', 'daughter'],
  ['a sister', hive('a', daughterOf('m')), hive('b', daughterOf('m')), 'sister', 'sister'],
  ['one line in words', hive('a', { line: 'Anna' }), hive('b', { line: 'anna' }), 'same-line', 'same-line'],
  ['the hive itself', hive('a', { line: 'Anna' }), hive('a', { line: 'Anna' }), null, null],
  ['nothing known', hive('a'), hive('b'), null, null],
  [
    'a mother of the same line',
    hive('a', { ...daughterOf('m'), line: 'x' }),
    hive('b', { queenId: 'm', line: 'x' }),
    'mother',
    'daughter',
  ],
] as const)('relations read from either side: %s', (_what, one, other, there, back) => {
  expect([relationOf(one, other), relationOf(other, one)]).toEqual([there, back]);
});
