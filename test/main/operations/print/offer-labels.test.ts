import { expect, test } from 'vitest';
import { recordObservation } from '../../../../main/operations/batches/record-observation.ts';
import { offerLabels } from '../../../../main/operations/print/offer-labels.ts';
import { printLabels } from '../../../../main/operations/print/print-labels.ts';
import { anObservation } from '../../../builders/batch.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aDeskWithBoxes } from '../../../builders/running-batch.ts';

const SHEET = 'a4-3x7-63.5x38.1' as const;

test('offers the labels of a batch with the days the boxes live by', () => {
  const offer = offerLabels(aDeskWithBoxes(), { batchId: null, sheet: SHEET });
  expect(offer.batches).toEqual([{ id: 'batch-1', code: '26-01', boxes: 6, unprinted: 6 }]);
  expect(offer.startAt).toBe(1);
  expect(offer.labels[0]).toMatchObject({
    box: 'K01',
    batch: '26-01',
    mother: 'mother H03',
    yearColour: 'white',
    handsOffUntil: 'Tue 26 May',
    firstLookOn: 'Thu 28 May',
    sealedBroodLookOn: 'Sat 6 Jun',
  });
});

test('knows which labels are printed, and that a moved day makes them old', async () => {
  const desk = aDeskWithBoxes();
  mustOk(
    await printLabels(desk, {
      batchId: 'batch-1',
      boxIds: null,
      sheet: SHEET,
      startAt: 1,
      qr: false,
      pencilLine: true,
      outline: false,
    }),
  );
  const offer = () => offerLabels(desk, { batchId: 'batch-1', sheet: SHEET });
  expect(offer().batches[0]?.unprinted).toBe(0);
  expect(offer().startAt).toBe(7);
  mustOk(
    recordObservation(
      desk,
      anObservation({ what: 'larva-age-note', seenOn: '2026-05-04', fromHours: 48, toHours: 60 }),
    ),
  );
  expect(offer().batches[0]?.unprinted).toBe(6);
  const [first] = offer().waiting;
  expect(first).toMatchObject({ boxId: 'box-1', box: 'K01', printedOn: '2026-05-14' });
  // The oldest larva is 60 hours instead of 24: queens come 36 hours earlier, at midnight between two days.
  expect(first?.changes).toContainEqual({ part: 'firstLookOn', was: 'Thu 28 May', now: 'Wed 27 May' });
  expect(first?.changes.map(({ part }) => part)).toEqual(['handsOffUntil', 'firstLookOn', 'sealedBroodLookOn']);
});

test('labels never printed wait without a change, and those printed in the meantime do not', async () => {
  const desk = aDeskWithBoxes();
  const sheet = { sheet: SHEET, startAt: 1, qr: false, pencilLine: true, outline: false };
  mustOk(await printLabels(desk, { batchId: 'batch-1', boxIds: ['box-2', 'box-3'], ...sheet }));
  const { waiting } = offerLabels(desk, { batchId: 'batch-1', sheet: SHEET });
  expect(waiting.map(({ box }) => box)).toEqual(['K01', 'K04', 'K05', 'K06']);
  expect(waiting.every(({ printedOn, changes }) => printedOn === null && changes.length === 0)).toBe(true);
});

test('days on labels follow the order chosen, months in letters; a printed label stays right', async () => {
  const desk = aDeskWithBoxes();
  const choice = { batchId: 'batch-1', boxIds: null, sheet: SHEET, startAt: 1 };
  mustOk(await printLabels(desk, { ...choice, qr: false, pencilLine: true, outline: false }));
  for (const dateOrder of ['month-first', 'year-first'] as const) {
    fill(desk, ({ settings }) => settings.put('dateOrder', dateOrder));
    const offer = offerLabels(desk, { batchId: 'batch-1', sheet: SHEET });
    expect(offer.labels[0]?.handsOffUntil).toBe('Tue May 26');
    expect(offer.batches[0]?.unprinted).toBe(0);
  }
});

test('offers nothing where no cell is in a box', () => {
  expect(offerLabels(aDesk(), { batchId: null, sheet: SHEET })).toEqual({
    batches: [],
    labels: [],
    waiting: [],
    startAt: 1,
  });
});
