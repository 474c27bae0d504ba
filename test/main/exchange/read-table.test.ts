import { gzipSync } from 'node:zlib';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import writeXlsxFile from 'write-excel-file/node';
import { readTable } from '../../../main/exchange/read-table.ts';

const asBytes = (content: string | Uint8Array): Uint8Array =>
  typeof content === 'string' ? new TextEncoder().encode(content) : Uint8Array.from(content);

/** Headings and rows, each row with its number. */
async function tableIn(content: string | Uint8Array, sheet: string | null = null) {
  const read = await readTable(asBytes(content), sheet);
  if (!read.ok) throw new Error(read.refusal.reason);
  const { headings, rows } = read.value;
  return [headings, ...rows.map(({ number, cells }) => [number, ...cells])];
}
async function troubleWith(content: string | Uint8Array) {
  const read = await readTable(asBytes(content), null);
  return read.ok ? null : read.refusal;
}

describe('a text table', () => {
  // RFC 4180, section 2, examples of rules 5 to 7.
  test('is read as the standard’s examples say', async () => {
    expect(await tableIn('aaa,bbb,ccc\r\n"zzz","y\r\nyy","x""x"')).toEqual([
      ['aaa', 'bbb', 'ccc'],
      [2, 'zzz', 'y\nyy', 'x"x'],
    ]);
  });

  test.each([',', ';', '\t', '|'])('parted by %j is understood without being told', async (separator) => {
    const text = [`code${separator}note`, `H1${separator}a`, `H2${separator}"1${separator}5"`].join('\n');
    expect(await tableIn(text)).toEqual([
      ['code', 'note'],
      [2, 'H1', 'a'],
      [3, 'H2', `1${separator}5`],
    ]);
  });

  test('may mix line ends, leave rows empty, and keeps the numbers a spreadsheet shows', async () => {
    expect(await tableIn('code,note\r\nH1,a\rH2,b\n\n,\nH3,c')).toEqual([
      ['code', 'note'],
      [2, 'H1', 'a'],
      [3, 'H2', 'b'],
      [6, 'H3', 'c'],
    ]);
  });

  test('loses the guard against formulas that our own files carry', async () => {
    expect(await tableIn(`code,note\nH1,"'=1+1"\nH2,'tis`)).toEqual([
      ['code', 'note'],
      [2, 'H1', '=1+1'],
      [3, 'H2', "'tis"],
    ]);
  });
});

describe('letters outside the first 128', () => {
  const text = 'code,note\nH1,Žofie’s café €5';
  const known = [
    ['code', 'note'],
    [2, 'H1', 'Žofie’s café €5'],
  ];

  test('come right from UTF-8 with and without its mark', async () => {
    expect(await tableIn(text)).toEqual(known);
    expect(await tableIn(`\ufeff${text}`)).toEqual(known);
  });

  test('come right from UTF-16 of both orders, marked or not', async () => {
    const little = Buffer.from(`\ufeff${text}`, 'utf16le');
    expect(await tableIn(little)).toEqual(known);
    expect(await tableIn(Buffer.from(little).swap16())).toEqual(known);
    expect(await tableIn(Buffer.from(text, 'utf16le'))).toEqual(known);
    expect(await tableIn(Buffer.from(text, 'utf16le').swap16())).toEqual(known);
  });

  test('come right from Windows-1252', async () => {
    // Bytes from the table of code page 1252: Ž 8E, ’ 92, é E9, € 80 (unicode.org, CP1252.TXT).
    const letters: Readonly<Record<string, number>> = { Ž: 0x8e, '’': 0x92, é: 0xe9, '€': 0x80 };
    const bytes = Uint8Array.from([...text].map((letter) => letters[letter] ?? letter.charCodeAt(0)));
    expect(await tableIn(bytes)).toEqual(known);
  });
});

describe('a spreadsheet', () => {
  const sheet = (rows: readonly (string | number | boolean | Date | null)[][], name: string) => ({
    sheet: name,
    data: rows.map((row) =>
      row.map((value) => (value instanceof Date ? { value, type: Date, format: 'dd/mm/yyyy' } : value)),
    ),
  });

  test('gives days as days, numbers as they are written, and the sheet that is asked for', async () => {
    const bytes = await writeXlsxFile([
      sheet([['empty']], 'Cover'),
      sheet(
        [
          ['code', 'day', 'cells', 'ok'],
          ['26-01', new Date(Date.UTC(2024, 1, 29)), 12, true],
        ],
        'Counts',
      ),
      sheet([['code'], ['H1'], [null], ['H2']], 'Hives'),
    ]).toBuffer();
    expect(await tableIn(bytes)).toEqual([
      ['code', 'day', 'cells', 'ok'],
      [2, '26-01', '2024-02-29', '12', 'true'],
    ]);
    expect(await tableIn(bytes, 'Hives')).toEqual([['code'], [2, 'H1'], [4, 'H2']]);
  });
});

describe('what cannot be read is declined', () => {
  test.each([
    ['nothing at all', '', 'empty'],
    ['headings alone', 'code,note\n', 'empty'],
    ['a picture', Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0, 0, 0, 13]), 'not-a-table'],
    ['a gzip', gzipSync('code\nH1'), 'not-a-table'],
    ['a quote left open', 'code,note\nH1,"open\nH2,x', 'quote-left-open'],
    ['more rows than are read', `code\n${'H1\n'.repeat(20_001)}`, 'too-many-rows'],
    ['more columns than are read', `${'a,'.repeat(201)}\n`, 'too-many-columns'],
    ['a cell as long as a book', `code\n${'x'.repeat(10_001)}`, 'cell-too-long'],
    ['a zip that is no spreadsheet', zipSync({ 'a.txt': strToU8('hello') }), 'not-a-table'],
    ['a zip within a zip', zipSync({ 'xl/workbook.xml': zipSync({ a: strToU8('b') }) }), 'not-a-table'],
    ['more bytes than are read', new Uint8Array(20_000_001).fill(65), 'too-large'],
  ] as const)('%s', async (_what, content, reason) => {
    expect((await troubleWith(content))?.reason).toBe(reason);
  });

  test('10 million cells, by what they claim and before they are laid out', async () => {
    const row = 'a,'.repeat(150);
    expect(await troubleWith(`${row}\n`.repeat(7000))).toEqual({ reason: 'too-many-cells', limit: 1_000_000 });
    const far = await spreadsheetWith('<row r="1048576"><c r="XFD1048576"><v>1</v></c></row>');
    expect((await troubleWith(far))?.reason).toBe('too-many-rows');
    const wide = await spreadsheetWith('<row r="1"><c r="XFD1"><v>1</v></c></row>');
    expect((await troubleWith(wide))?.reason).toBe('too-many-columns');
  });

  test('a zip bomb, while it is unpacked: 200 MB out of 200 kB', async () => {
    const bomb = zipSync({
      'xl/workbook.xml': strToU8('<a/>'),
      'xl/worksheets/sheet1.xml': new Uint8Array(200_000_000),
    });
    expect(bomb.length).toBeLessThan(300_000);
    const before = process.memoryUsage().rss;
    expect(await troubleWith(bomb)).toEqual({ reason: 'zip-too-large' });
    expect(process.memoryUsage().rss - before).toBeLessThan(400_000_000);
  });

  test('a zip that was cut short', async () => {
    const whole = await spreadsheetWith(
      '<row r="1"><c r="A1"><v>1</v></c></row><row r="2"><c r="A2"><v>1</v></c></row>',
    );
    expect(await tableIn(whole)).toEqual([['1'], [2, '1']]);
    for (const part of [10, 100, 400, 700])
      expect((await troubleWith(whole.subarray(0, part)))?.reason).toMatch(/^(zip-broken|not-a-table)$/);
  });
});

/** A small sheet whose rows are replaced by those given. */
async function spreadsheetWith(rows: string): Promise<Uint8Array> {
  const bytes = await writeXlsxFile([[{ value: 'x', type: String }]]).toBuffer();
  const { unzipSync } = await import('fflate');
  const entries = unzipSync(bytes);
  const name = Object.keys(entries).find((entry) => entry.startsWith('xl/worksheets/sheet')) ?? '';
  const xml = new TextDecoder().decode(entries[name]);
  entries[name] = strToU8(xml.replace(/<sheetData>.*<\/sheetData>/s, `<sheetData>${rows}</sheetData>`));
  return zipSync(entries);
}

test('the reader of text tables is not taken in by names of object parts', async () => {
  expect(await tableIn('__proto__,constructor\nx,y')).toEqual([
    ['__proto__', 'constructor'],
    [2, 'x', 'y'],
  ]);
  expect(Object.getPrototypeOf({})).toBe(Object.prototype);
});
