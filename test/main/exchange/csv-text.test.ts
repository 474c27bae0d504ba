import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { csvText, withoutGuard } from '../../../main/exchange/csv-text.ts';

const one = (cell: string | number | null, separator: ',' | ';' = ',') => csvText(['a'], [[cell]], { separator });

// RFC 4180, section 2, its own examples: rule 6 (line breaks, quotes and commas stand in quotes) and rule 7 (a quote is
// doubled): "aaa","b CRLF bb","ccc" and "aaa","b""bb","ccc".
test('fields are quoted as in the standard’s examples', () => {
  expect(csvText(['aaa', 'bbb', 'ccc'], [['zzz', 'yyy', 'xxx']], { separator: ',' })).toBe(
    'aaa,bbb,ccc\r\nzzz,yyy,xxx',
  );
  expect(csvText(['aaa', 'b\r\nbb', 'ccc'], [], { separator: ',' })).toBe('aaa,"b\r\nbb",ccc');
  expect(csvText(['aaa', 'b"bb', 'c,c'], [], { separator: ',' })).toBe('aaa,"b""bb","c,c"');
});

test('with semicolons a comma needs no quotes, and the other way round', () => {
  expect(one('1,5', ';')).toBe('a\r\n1,5');
  expect(one('1;5', ';')).toBe('a\r\n"1;5"');
  expect(one('1;5')).toBe('a\r\n1;5');
});

test('with semicolons goes the decimal comma, as spreadsheets of such languages expect', () => {
  expect(one(2.5, ';')).toBe('a\r\n2,5');
  expect(one(2.5)).toBe('a\r\n2.5');
  expect(one(-12, ';')).toBe('a\r\n-12');
});

test('nothing known is an empty field, none is 0', () => {
  expect(csvText(['a', 'b', 'c'], [[null, 0, '']], { separator: ',' })).toBe('a,b,c\r\n,0,');
});

describe('a text that a spreadsheet would run', () => {
  // OWASP, "CSV Injection": cells that begin with = + - @, tab, carriage return or line feed.
  test.each(['=1+1', '+49', '-1', '@SUM(A1)', '\t=1', '\r=1', '\n=1', "'=1"])('%j is guarded', (text) => {
    const cell = parse(one(text), { relax_quotes: false })[1]?.[0];
    expect(cell).toBe(`'${text}`);
    expect(withoutGuard(cell ?? '')).toBe(text);
  });

  test('numbers below zero are left alone, and so are apostrophes that guard nothing', () => {
    expect(one(-1)).toBe('a\r\n-1');
    expect(one("'tis")).toBe("a\r\n'tis");
    expect(withoutGuard("'tis")).toBe("'tis");
  });
});

const anyText = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 30 }),
  fc.string({ unit: fc.constantFrom('"', ',', ';', '\r', '\n', ' ', "'", '=', '-', 'x', '\ufeff'), maxLength: 8 }),
);

test.each([',', ';'] as const)('any table parted by %s comes back from two independent readers', (separator) => {
  const table = fc
    .integer({ min: 2, max: 5 })
    .chain((width) => fc.array(fc.array(anyText, { minLength: width, maxLength: width }), { minLength: 1 }));
  fc.assert(
    fc.property(table, (rows) => {
      const headings = rows[0]?.map((_, index) => `column ${index}`) ?? [];
      const text = `${csvText(headings, rows, { separator })}\r\n`;
      const unguard = (read: readonly (readonly string[])[]) => read.slice(1).map((row) => row.map(withoutGuard));
      expect(unguard(parse(text, { delimiter: separator, record_delimiter: '\r\n' }))).toEqual(rows);
      const papa = Papa.parse<string[]>(text.slice(0, -2), { delimiter: separator, newline: '\r\n' });
      expect(papa.errors).toEqual([]);
      expect(unguard(papa.data)).toEqual(rows);
    }),
  );
});
