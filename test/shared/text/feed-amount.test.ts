import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  feedAmountText,
  kilogramsTyped,
  parseFeedAmount,
  unitOf,
  weightText,
} from '../../../shared/text/feed-amount.ts';

const UNKNOWN = { litres: null, kilograms: null };

describe('an amount as typed', () => {
  // Quart 0.946 352 946 L, pound 0.453 592 37 kg, ounce 28.349 523 125 g: NIST Special Publication 811, appendix B.8.
  test.each([
    ['1', 'litres', 'metric', { litres: 1 }],
    ['0,5', 'litres', 'metric', { litres: 0.5 }],
    ['500 g', 'litres', 'metric', { kilograms: 0.5 }],
    ['250ml', 'kilograms', 'metric', { litres: 0.25 }],
    ['1.5 L', 'kilograms', 'metric', { litres: 1.5 }],
    ['2', 'kilograms', 'metric', { kilograms: 2 }],
    ['2', 'litres', 'us', { litres: 1.893 }],
    ['3', 'kilograms', 'us', { kilograms: 1.361 }],
    ['1 gal', 'litres', 'metric', { litres: 3.785 }],
    ['8 oz', 'litres', 'us', { kilograms: 0.227 }],
    ['2 kg', 'kilograms', 'us', { kilograms: 2 }],
  ] as const)('“%s”, usually in %s, %s', (text, usual, measures, amount) => {
    expect(parseFeedAmount(text, usual, measures)).toEqual({ ...UNKNOWN, ...amount });
  });

  test.each(['', '  ', '?'])('“%s” is not known how much', (text) => {
    expect(parseFeedAmount(text, 'litres', 'metric')).toEqual(UNKNOWN);
  });

  test.each(['plenty', '0', '-1', '1 bucket', '0.0001', '1,2,3', 'g'])('“%s” is no amount', (text) => {
    expect(parseFeedAmount(text, 'kilograms', 'metric')).toBeNull();
  });
});

describe('a weight', () => {
  test('is kept in kilograms, and read and typed in the measures of the person', () => {
    // 50 lb are 22.680 kg: NIST Special Publication 811, appendix B.8.
    expect(kilogramsTyped(50, 'us')).toBe(22.68);
    expect(kilogramsTyped(50, 'metric')).toBe(50);
    const read = (measures: 'us' | 'metric', language: 'en' | 'de') =>
      weightText(22.68, measures, language).replace('\u00a0', ' ');
    expect([read('us', 'en'), read('metric', 'en'), read('us', 'de')]).toEqual(['50.0 lb', '22.7 kg', '50,0 lb']);
  });
});

describe('an amount as read', () => {
  test.each([
    [{ ...UNKNOWN, litres: 1.5 }, 'metric', '1.5 L'],
    [{ ...UNKNOWN, kilograms: 0.3 }, 'metric', '300 g'],
    [{ ...UNKNOWN, kilograms: 2.25 }, 'metric', '2.25 kg'],
    [{ ...UNKNOWN, litres: 1.893 }, 'us', '2 qt'],
    [{ ...UNKNOWN, kilograms: 0.227 }, 'us', '0.5 lb'],
    [UNKNOWN, 'metric', ''],
  ] as const)('%o in %s is “%s”', (amount, measures, text) => {
    expect(feedAmountText(amount, measures).replace('\u00a0', ' ')).toBe(text);
  });

  test('German writes a comma', () => {
    expect(feedAmountText({ ...UNKNOWN, litres: 0.5 }, 'metric', 'de')).toBe('0,5\u00a0L');
  });

  test('what is read is typed back as the same amount, to a hundredth of the unit', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('litres', 'kilograms'),
        fc.constantFrom('metric', 'us'),
        fc.integer({ min: 20, max: 100_000 }),
        fc.constantFrom('en', 'de'),
        (measure, measures, thousandths, language) => {
          const amount = { ...UNKNOWN, [measure]: thousandths / 1000 };
          const back = parseFeedAmount(feedAmountText(amount, measures, language), 'litres', measures);
          expect(back?.[measure]).toBeCloseTo(thousandths / 1000, measures === 'us' ? 1 : 3);
          expect(unitOf(measure, measures)).not.toBe('');
        },
      ),
    );
  });
});
