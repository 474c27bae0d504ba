import { expect, test } from 'vitest';
import { makeErrand } from '../../../../main/operations/boxes/make-errand.ts';
import { saveHive } from '../../../../main/operations/hives/save-hive.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aTypedLook, errandTypedInto, look } from '../../../builders/errand.ts';
import { aDeskWithBoxes, onDay, refusalOf } from '../../../builders/running-batch.ts';

const home = () => onDay(aDeskWithBoxes(), '2026-06-05');

test('holds the named boxes, their cells, batch and looks, and opens as a workbook of its own', () => {
  const desk = home();
  look(desk, aTypedLook(1, 'virgin', { lookedOn: '2026-05-20' }));
  let there: Record<string, readonly unknown[]> = {};
  errandTypedInto(desk, 'K01-K03', ({ workbook: { tables } }) => {
    there = {
      boxes: tables.boxes.all().map(({ code }) => code),
      placements: tables.placements.all().map(({ id }) => id),
      batches: tables.batches.all().map(({ code }) => code),
      looks: tables.boxLooks.all().map(({ result }) => result),
    };
  });
  expect(there).toEqual({
    boxes: ['K01', 'K02', 'K03'],
    placements: ['placement-1', 'placement-2', 'placement-3'],
    batches: ['26-01'],
    looks: ['virgin'],
  });
});

test('takes along the queens that sit in the named boxes, and no other', () => {
  const desk = home();
  for (const box of [1, 5]) {
    const queen = { id: `queen-${box}`, number: `26-00${box}` };
    look(desk, aTypedLook(box, 'laying', { id: `marked-${box}`, lookedOn: '2026-05-28', queen }));
  }
  let numbers: readonly string[] = [];
  errandTypedInto(desk, 'K01-K03', ({ workbook: { tables } }) => {
    numbers = tables.queens.all().map(({ number }) => number);
  });
  expect(numbers).toEqual(['26-001']);
});

test('keeps notes about hives and batches, and all other hives, at home', () => {
  const desk = home();
  const h03 = desk.workbook.tables.colonies.where({ code: 'H03' })[0];
  if (!h03) throw new Error('no hive');
  mustOk(saveHive(desk, { ...h03, note: 'sold her sister for a song' }));
  mustOk(saveHive(desk, { ...h03, id: 'h99', code: 'H99', note: null }));
  const made = mustOk(makeErrand(desk, { boxes: 'K01' }));
  const bytes = Buffer.from(made.base64, 'base64').toString('latin1');
  expect(bytes).toContain('H03');
  expect(bytes).not.toContain('for a song');
  expect(bytes).not.toContain('H99');
  expect(made).toMatchObject({ name: 'Errand for Memory 2026-06-05.ripecell', boxes: ['K01'] });
});

test('says which box is not there, and changes nothing at home', () => {
  const desk = home();
  expect(refusalOf(makeErrand(desk, { boxes: 'K01, K77' }))).toEqual({
    kind: 'box-not-found',
    field: 'boxes',
    code: 'K77',
  });
  expect(refusalOf(makeErrand(desk, { boxes: '?' }))).toMatchObject({ kind: 'box-codes-unreadable' });
  const before = desk.workbook.changeNumber;
  mustOk(makeErrand(desk, { boxes: 'K01' }));
  expect(desk.workbook.changeNumber).toBe(before);
});
