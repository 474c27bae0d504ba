import { expect, test } from 'vitest';
import { getBatchForm } from '../../../../main/operations/batches/get-batch-form.ts';
import { aDesk } from '../../../builders/desk.ts';
import { aDeskWithBatch, onDay } from '../../../builders/running-batch.ts';

test('offers the next code, hives in their role first, who holds cells until when, and last time’s choice', () => {
  const offer = getBatchForm(onDay(aDeskWithBatch(), '2026-05-10'));
  expect(offer.nextCode).toBe('26-02');
  expect(offer.breeders.map((hive) => hive.code)).toEqual(['H03', 'H12']);
  expect(offer.builders.map(({ code, freeFrom, heldBy }) => [code, freeFrom, heldBy])).toEqual([
    ['H12', '2026-05-14', '26-01'],
    ['H03', null, null],
  ]);
  expect(offer.last).toEqual({ method: 'cut-comb-edge', breederId: 'h03', builderId: 'h12', cells: 12 });
});

test('offers an empty workbook its first code and nothing else', () => {
  expect(getBatchForm(aDesk({ today: '2027-04-01' }))).toEqual({
    nextCode: '27-01',
    breeders: [],
    builders: [],
    methodCopies: [],
    last: null,
  });
});
