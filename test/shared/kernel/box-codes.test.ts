import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareCodes, readBoxCodes, shortCodes } from '../../../shared/kernel/box-codes.ts';

describe('box codes as people write them', () => {
  test.each([
    ['K01-K03', ['K01', 'K02', 'K03']],
    ['k9–k11', ['K9', 'K10', 'K11']],
    ['K1 - 3', ['K1', 'K2', 'K3']],
    ['K01, M3; M7', ['K01', 'M3', 'M7']],
    ['12-14', ['12', '13', '14']],
    ['K01 K01', ['K01']],
    ['Hof', ['HOF']],
  ])('%s', (text, codes) => {
    expect(readBoxCodes(text)).toEqual(codes);
  });

  test.each(['', ' , ', 'K3-K1', 'K5, K3-K1', 'K1-M3', 'K1-K2-K3', 'K1-K999', '?', 'K1a-K3', 'x'.repeat(13)])(
    '"%s" cannot be read',
    (text) => {
      expect(readBoxCodes(text)).toBeNull();
    },
  );

  test('a span may hold 200 boxes, and a list no more', () => {
    expect(readBoxCodes('K1-K200')).toHaveLength(200);
    expect(readBoxCodes('K1-K201')).toBeNull();
    expect(readBoxCodes('K1-K150, M1-M50')).toHaveLength(200);
    expect(readBoxCodes('K1-K150, M1-M51')).toBeNull();
    expect(readBoxCodes('K7-K7')).toEqual(['K7']);
  });

  test.each(['-', 'K1-', '-K3', '?-K3', 'K1-?'])('half a span, "%s", cannot be read', (text) => {
    expect(readBoxCodes(text)).toBeNull();
  });

  test('K2 comes before K10', () => {
    expect(['K10', 'K2', 'A1'].toSorted(compareCodes)).toEqual(['A1', 'K2', 'K10']);
  });

  test('a row of codes is said shortly and read back the same', () => {
    expect(shortCodes(['K03', 'K01', 'K02', 'K07', 'M1'])).toBe('K01–K03, K07, M1');
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: 1, max: 99 }), { minLength: 1 }), (numbers) => {
        const codes = numbers.map((number) => `K${String(number).padStart(2, '0')}`).toSorted(compareCodes);
        expect(readBoxCodes(shortCodes(codes))).toEqual(codes);
      }),
    );
  });
});
