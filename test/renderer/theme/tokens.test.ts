// Contrast by the formula of WCAG 2.2 (relative luminance, 1.4.3 and 1.4.11), reckoned here from the tokens themselves.
import { describe, expect, test } from 'vitest';
import { DARK, LIGHT, SERIES, SERIES_DARK, YEAR_PAINT } from '../../../renderer/theme/tokens.ts';

function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const channel = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
const contrast = (one: string, other: string): number => {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
};

test('the formula gives the ratios WCAG names: 21 for black on white, 1 for like on like', () => {
  expect(contrast('#000000', '#FFFFFF')).toBeCloseTo(21, 5);
  expect(contrast('#777777', '#FFFFFF')).toBeCloseTo(4.48, 2);
  expect(contrast('#123456', '#123456')).toBe(1);
});

describe.each([
  ['light', LIGHT, SERIES],
  ['dark', DARK, SERIES_DARK],
] as const)('%s', (_name, colours, series) => {
  test.each(['ink', 'softInk', 'accent', 'good', 'notice', 'bad', 'handsOff'] as const)(
    '%s can be read on paper and surface',
    (role) => {
      expect(contrast(colours[role], colours.paper)).toBeGreaterThanOrEqual(4.5);
      expect(contrast(colours[role], colours.surface)).toBeGreaterThanOrEqual(4.5);
    },
  );
  test.each(['rule', 'focus'] as const)('%s can be seen on paper and surface', (role) => {
    expect(contrast(colours[role], colours.paper)).toBeGreaterThanOrEqual(3);
    expect(contrast(colours[role], colours.surface)).toBeGreaterThanOrEqual(3);
  });
  test('words on the accent can be read, and the demo strip too', () => {
    expect(contrast(colours.onAccent, colours.accent)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(colours.paper, colours.ink)).toBeGreaterThanOrEqual(4.5);
  });
  test('every series can be seen', () => {
    for (const colour of series) expect(contrast(colour, colours.paper), colour).toBeGreaterThanOrEqual(3);
  });
});

test.each(Object.entries(YEAR_PAINT))('the letter on the %s year mark can be read', (_colour, { paint, letter }) => {
  expect(contrast(letter, paint)).toBeGreaterThanOrEqual(4.5);
});
