import { expect, test } from 'vitest';
import {
  ANCHORS,
  batchStart,
  firstAnchor,
  givenForm,
  hive,
  isNoNumber,
  startingForm,
} from '../../../../renderer/features/batches/batch-form.ts';
import { readCounts, typedCounts } from '../../../../renderer/features/batches/typed-counts.ts';
import { methodTable } from '../../../../shared/biology/method-steps.ts';
import { BatchStart } from '../../../../shared/contract/batches.ts';
import { METHODS } from '../../../../shared/model/method.ts';

const offer = {
  nextCode: '26-01',
  breeders: [{ id: 'h3', code: 'H03', name: null }],
  builders: [],
  methodCopies: [],
  lessons: [],
  last: null,
};
const ids = { batch: 'b', breeder: 'new-mother', builder: 'new-builder' };

test('a typed form is what the operation takes', () => {
  const form = { ...startingForm(offer, '2026-05-04'), mother: 'h03', builder: 'H12', cells: '12' };
  const input = batchStart(form, offer, ids);
  expect(BatchStart.safeParse(input).success).toBe(true);
  expect(input).toMatchObject({
    breederId: 'h3',
    newBreeder: null,
    builderId: null,
    newBuilder: { id: 'new-builder', code: 'H12' },
    cellsPlanned: 12,
    comb: 'drawn',
  });
  expect(batchStart({ ...form, day: null }, offer, ids)).toBeNull();
});

test('the address asks for another batch like one, or for a hive from the day it is free', () => {
  const asked = (query: string) => givenForm(offer, new URLSearchParams(query));
  expect(asked('method=comb-strip&mother=H03&builder=H12&cells=20')).toEqual({
    method: 'comb-strip',
    methodCopyId: null,
    anchorStep: firstAnchor('comb-strip'),
    mother: 'H03',
    builder: 'H12',
    cells: '20',
  });
  expect(asked('builder=H04&day=2026-05-30')).toEqual({ builder: 'H04', day: '2026-05-30' });
  expect(asked('')).toEqual({});
  expect(asked('method=none&day=soon')).toEqual({});
});

test('an empty hive or number is not said, not nothing', () => {
  const input = batchStart({ ...startingForm(offer, '2026-05-04'), cells: '' }, offer, ids);
  expect(input).toMatchObject({ breederId: null, newBreeder: null, cellsPlanned: null });
  expect(hive('  ', offer.breeders, 'x')).toEqual({ id: null, fresh: null });
  expect([isNoNumber('12'), isNoNumber(''), isNoNumber('a dozen'), isNoNumber('-1')]).toEqual([
    false,
    false,
    true,
    true,
  ]);
});

test.each(METHODS)('%s is reckoned from a step that fixes its calendar', (method) => {
  const { fixedBy } = methodTable(method, 'drawn');
  for (const step of ANCHORS[method]) expect(fixedBy).toContain(step);
  expect(ANCHORS[method]).toContain(firstAnchor(method));
});

test('typed counts keep "not counted" apart from 0, and refuse what is no whole number', () => {
  const bar = { barId: 'x', number: 1, counts: { given: 12, taken: 0, removed: null, sealed: null }, countedOn: null };
  const typed = typedCounts(bar);
  expect(typed).toEqual({ given: '12', taken: '0', removed: '', sealed: '' });
  expect(readCounts(typed)).toEqual(bar.counts);
  expect(readCounts({ ...typed, sealed: 'eight' })).toBeNull();
  expect(readCounts({ ...typed, sealed: '-1' })).toBeNull();
  expect(readCounts({ ...typed, sealed: ' 8 ' })?.sealed).toBe(8);
});

test('a few letters mean a known hive only where just one can be meant', () => {
  const known = [
    { id: 'h3', code: 'H03', name: 'Anna' },
    { id: 'h12', code: 'H12', name: null },
    { id: 'h15', code: 'H15', name: 'Berta' },
    { id: 'b15', code: 'B15', name: 'Bella' },
  ];
  const meant = (typed: string) => hive(typed, known, 'new').id;
  expect(meant('h12')).toBe('h12');
  expect(meant('H3')).toBe('h3');
  expect(meant('3')).toBe('h3');
  expect(meant('12')).toBe('h12');
  expect(meant('an')).toBe('h3');
  // Two hives with number 15, two names with "be", one letter, and a code that may be a new one: none is meant.
  for (const typed of ['15', 'be', 'a', 'H1', 'H', '1']) {
    expect(meant(typed), typed).toBeNull();
    expect(hive(typed, known, 'new').fresh, typed).toEqual({ id: 'new', code: typed });
  }
});
