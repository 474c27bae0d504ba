import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Table, Tables } from '../../../../main/workbook/workbook.ts';
import type { Id } from '../../../../shared/kernel/id.ts';
import { BatchTally } from '../../../../shared/model/tally.ts';
import { aFilledDesk, count, given, maybe, RECORDS } from '../../../builders/any-records.ts';
import { aDesk, fill } from '../../../builders/desk.ts';

describe('a record comes back from its table as it went in', () => {
  test.each(Object.entries(RECORDS).map(([table, [schema, records]]) => ({ table, schema, records })))(
    '$table',
    ({ table, schema, records }) => {
      fc.assert(
        fc.property(records as fc.Arbitrary<{ id: Id }>, records as fc.Arbitrary<{ id: Id }>, (first, second) => {
          expect(schema.parse(first)).toEqual(first);
          const desk = aFilledDesk();
          const rows = (tables: Tables) => tables[table as keyof typeof RECORDS] as unknown as Table<{ id: Id }>;
          fill(desk, (tables) => rows(tables).insert(first));
          expect(rows(desk.workbook.tables).get(first.id)).toEqual(first);
          expect(rows(desk.workbook.tables).all()).toContainEqual(first);
          expect(rows(desk.workbook.tables).where(first)).toEqual([first]);
          const changed = { ...second, id: first.id };
          fill(desk, (tables) => rows(tables).update(changed));
          expect(rows(desk.workbook.tables).get(first.id)).toEqual(changed);
          fill(desk, (tables) => rows(tables).remove(first.id));
          expect(rows(desk.workbook.tables).get(first.id)).toBeNull();
        }),
        { numRuns: 25 },
      );
    },
  );

  test('every table of records is among them', () => {
    const { workbook } = aDesk();
    expect([...Object.keys(RECORDS), 'tallies', 'seasonSums', 'settings'].sort()).toEqual(
      Object.keys(workbook.tables).sort(),
    );
  });

  test('a tally, written over as often as its batch changes', () => {
    const sum = maybe(count);
    const tally = fc.record({
      batchId: given('batch-1'),
      given: sum,
      taken: sum,
      enteredSealing: sum,
      sealed: sum,
      placed: count,
      emergenceKnown: count,
      emerged: count,
      matingKnown: count,
      proved: count,
      laying: count,
    });
    const desk = aFilledDesk();
    fc.assert(
      fc.property(tally, (row) => {
        expect(BatchTally.parse(row)).toEqual(row);
        fill(desk, ({ tallies }) => tallies.put(row));
        expect(desk.workbook.tables.tallies.get('batch-1')).toEqual(row);
        expect(desk.workbook.tables.tallies.all()).toEqual([row]);
      }),
    );
  });

  test('days of weather are found by their span, earliest first', () => {
    const desk = aDesk();
    const noted = { maxCelsius: 21.5, windKmh: null, rain: false, flyingHours: 3 };
    fill(desk, ({ weather }) => {
      for (const day of ['2026-05-03', '2026-05-01', '2026-05-02', '2026-05-04'])
        weather.insert({ ...noted, id: day, day });
    });
    const days = desk.workbook.tables.weather.between('2026-05-01', '2026-05-03');
    expect(days.map(({ day }) => day)).toEqual(['2026-05-01', '2026-05-02', '2026-05-03']);
    expect(days[0]).toEqual({ ...noted, id: '2026-05-01', day: '2026-05-01' });
  });

  test('a setting, whatever JSON it is', () => {
    const desk = aDesk();
    fc.assert(
      fc.property(fc.jsonValue({ noUnicodeString: false }), (value) => {
        const asJson: unknown = JSON.parse(JSON.stringify(value));
        fill(desk, ({ settings }) => settings.put('key', asJson));
        expect(desk.workbook.tables.settings.get('key')).toEqual(asJson);
      }),
    );
    expect(desk.workbook.tables.settings.get('never put')).toBeNull();
  });
});
