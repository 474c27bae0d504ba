import { expect, test } from 'vitest';
import { getBatchForm } from '../../../../main/operations/batches/get-batch-form.ts';
import { ok } from '../../../../shared/kernel/result.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
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

test('brings back what earlier batches taught, the latest first', () => {
  const desk = aDeskWithBatch();
  expect(getBatchForm(desk).lessons).toEqual([]);
  const { batches } = desk.workbook.tables;
  const batch = batches.get('batch-1');
  if (!batch) throw new Error('no batch');
  const write = (id: string, code: string, anchorOn: string, lesson: string | null) =>
    mustOk(
      desk.workbook.change(
        () => ({ did: 'edit-batch', batch: code }),
        (tables) => {
          tables.batches.insert({ ...batch, id, code, anchorOn, lesson });
          return ok(null);
        },
      ),
    );
  write('older', '25-01', '2025-05-01', 'Feed before, not after.');
  write('silent', '25-02', '2025-05-20', null);
  write('newer', '25-03', '2025-06-01', 'Fewer cells a bar.');
  expect(getBatchForm(desk).lessons).toEqual([
    { batchId: 'newer', batch: '25-03', method: 'cut-comb-edge', lesson: 'Fewer cells a bar.' },
    { batchId: 'older', batch: '25-01', method: 'cut-comb-edge', lesson: 'Feed before, not after.' },
  ]);
});

test('offers an empty workbook its first code and nothing else', () => {
  expect(getBatchForm(aDesk({ today: '2027-04-01' }))).toEqual({
    nextCode: '27-01',
    breeders: [],
    builders: [],
    methodCopies: [],
    lessons: [],
    last: null,
  });
});
