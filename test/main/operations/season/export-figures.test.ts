import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import { exportFigures } from '../../../../main/operations/season/export-figures.ts';
import { aDeskWithCounted, through } from '../../../builders/counted-batches.ts';
import { mustOk } from '../../../builders/desk.ts';

const asked = { factor: 'method', and: null, season: null, leaveOutPractice: true } as const;
const desk = () =>
  aDeskWithCounted([
    { method: 'larva-grafting', tally: through(30, 22, 20, 18, 13) },
    { method: 'larva-grafting', tally: through(30, 24, 22, 19, 15) },
    { tally: through(12, 9, 8, 7, 5) },
  ]);
/** Read by another program's reader (csv-parse, RFC 4180). */
const rowsOf = (base64: string, delimiter: string) =>
  parse<Record<string, string>>(Buffer.from(base64, 'base64').toString('utf8'), {
    columns: true,
    bom: true,
    delimiter,
  });

test('one row for each group and stage, with counts, plain share and weighed range', async () => {
  const made = mustOk(await exportFigures(desk(), { ...asked, separator: 'comma' }));
  expect(made).toMatchObject({ name: 'figures by method 2030-12-01.csv', rows: 10 });
  const rows = rowsOf(made.base64, ',');
  const take = rows.find((row) => row.group === 'Larva grafting' && row.stage === 'take');
  expect(take).toMatchObject({ came: '46', of: '60', batches: '2', 'plain share': '0.766667' });
  const [from, share, to] = ['weighed from', 'weighed share', 'weighed to'].map((name) => Number(take?.[name]));
  expect([(from ?? 1) < (share ?? 0), (share ?? 1) < (to ?? 0)]).toEqual([true, true]);
  // The whole way is a product and is not weighed: an empty field, not a nought.
  expect(rows.find((row) => row.stage === 'whole way')?.['weighed share']).toBe('');
});

test('semicolons where the person wants them, and only headings without counts', async () => {
  const made = mustOk(await exportFigures(desk(), { ...asked, separator: 'semicolon' }));
  expect(rowsOf(made.base64, ';')).toHaveLength(10);
  const none = mustOk(await exportFigures(aDeskWithCounted([]), { ...asked, separator: 'comma' }));
  expect(none.rows).toBe(0);
});
