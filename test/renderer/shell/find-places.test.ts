import { expect, test } from 'vitest';
import { findPlaces } from '../../../renderer/shell/find-places.ts';
import { english } from '../../../shared/text/english/english.ts';

const haystack = {
  words: english,
  batches: [{ id: 'b1', code: '26-01', method: 'larva-grafting' }],
  hives: [
    { id: 'h1', code: 'H01', name: 'Anna' },
    { id: 'h10', code: 'H10', name: null },
  ],
  boxes: [
    { id: 'k17', code: 'K17', state: 'free' },
    { id: 'k1', code: 'K1', state: 'virgin' },
    { id: 'k10', code: 'K10', state: 'virgin' },
  ],
  queens: [{ queen: { id: 'q1', number: '26-001' } }],
} as never;
const found = (typed: string) => findPlaces(typed, haystack).map(({ name, to }) => [name, to]);

test('hives, batches, boxes, queens and views are found by a few letters', () => {
  expect(found('anna')).toEqual([['H01 Anna', { address: '/hives/h1' }]]);
  expect(found('26-01')).toEqual([['26-01', { address: '/batches/b1' }]]);
  expect(found('26-0')).toContainEqual(['26-001', { address: '/queens/q1' }]);
  expect(found('seas')).toEqual([['Season', { address: '/season' }]]);
  expect(found('type what')).toEqual([['Type what was done', { address: '/today/steps' }]]);
});

test('the very name comes before names that only begin so', () => {
  expect(found('k1').map(([name]) => name)).toEqual(['K1', 'K17', 'K10']);
});

test('commands are found by the words of the menu', () => {
  expect(found('put cells')).toEqual([['Put cells in boxes', { command: 'place-cells' }]]);
  expect(found('undo')).toContainEqual([english.menu.undo, { command: 'undo' }]);
});

test('without letters the pages are offered, and never more than fit', () => {
  expect(found('').length).toBe(9);
  expect(found('e').length).toBe(9);
});
