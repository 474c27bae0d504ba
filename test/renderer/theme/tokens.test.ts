// Contrast by the formula of WCAG 2.2 (relative luminance, 1.4.3 and 1.4.11), reckoned here from the tokens themselves.
import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import {
  type Colours,
  DARK,
  LIGHT,
  SERIES,
  SERIES_DARK,
  STAGE_TONES,
  YEAR_PAINT,
} from '../../../renderer/theme/tokens.ts';

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

const RENDERER = join(import.meta.dirname, '../../../renderer');
const sources = globSync('**/*.{css,tsx,ts}', { cwd: RENDERER }).map((file) => ({
  file,
  text: readFileSync(join(RENDERER, file), 'utf8'),
}));
const roleOf = (variable: string) => variable.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());

/** `share` of one colour over another, as `color-mix(in srgb, …)` and a hatch do. */
function mixed(over: string, under: string, share: number): string {
  const channel = (hex: string, at: number) => Number.parseInt(hex.slice(at, at + 2), 16);
  const parts = [1, 3, 5].map((at) => Math.round(channel(over, at) * share + channel(under, at) * (1 - share)));
  return `#${parts.map((part) => part.toString(16).padStart(2, '0')).join('')}`;
}

/** Every block of the style sheets that gives text a colour, with the ground it names itself, if any. */
const textRules = sources
  .filter(({ file }) => file.endsWith('.css'))
  .flatMap(({ text }) => [...text.matchAll(/([^{};]+)\{([^{}]*)/g)])
  .flatMap(([, selector = '', body = '']) => {
    const colour = /(?:^|[\s;])color: var\(--([a-z-]+)\)/.exec(body)?.[1];
    const ground = /background(?:-color)?: var\(--([a-z-]+)\)/.exec(body)?.[1];
    return colour
      ? [{ selector: selector.trim(), colour, ground: ground ?? (/^\.strip/.test(selector.trim()) ? 'ink' : null) }]
      : [];
  });
const inlineColours = sources
  .filter(({ file }) => file.endsWith('.tsx'))
  .flatMap(({ text }) => [...text.matchAll(/(?:color: '|<t(?:ext|span)[^>]*fill=")var\(--([a-z-]+)\)/g)])
  .map((match) => match[1] ?? '');

describe.each([
  ['light', LIGHT],
  ['dark', DARK],
] as const)('every text colour written anywhere in the window, in %s', (_name, colours: Colours) => {
  const of = (variable: string) => colours[roleOf(variable) as keyof Colours];
  // A hatched tile or row mixes the hands-off blue into the ground at 16 %.
  const grounds = [colours.paper, colours.surface].flatMap((ground) => [ground, mixed(colours.handsOff, ground, 0.16)]);

  test('there are rules to check', () => {
    expect(textRules.length).toBeGreaterThan(20);
    expect(inlineColours.length).toBeGreaterThan(5);
  });
  test.each(textRules)('$selector: $colour', ({ colour, ground }) => {
    for (const under of ground === null ? grounds : [of(ground)])
      expect(contrast(of(colour), under), `${of(colour)} on ${under}`).toBeGreaterThanOrEqual(4.5);
  });
  test.each([...new Set(inlineColours)])('in a component: %s', (colour) => {
    for (const under of grounds) expect(contrast(of(colour), under), under).toBeGreaterThanOrEqual(4.5);
  });
});

test('texture and outline of every stage can be told from the stage before it or carry its own pattern in ink', () => {
  // WCAG 2.2, 1.4.11: what is needed to understand a graphic has 3:1. Stages are drawn with a pattern in ink on the light
  // tones and in paper on the dark ones.
  for (const [stage, tone] of Object.entries(STAGE_TONES))
    expect(Math.max(contrast(LIGHT.ink, tone), contrast(LIGHT.paper, tone)), stage).toBeGreaterThanOrEqual(3);
});

test('colours are named in the tokens only; the first paint uses the same paper and ink', () => {
  const own = /(^|\/)(tokens\.ts|first-paint\.css|LabelPreview\.tsx)$/;
  const strays = sources
    .filter(({ file }) => !own.test(file))
    .flatMap(({ file, text }) => {
      const found = text.match(/#[0-9a-fA-F]{6}\b|\brgba?\(/g) ?? [];
      return found.map((colour) => `${file}: ${colour}`);
    });
  expect(strays).toEqual([]);
  const first = sources.find(({ file }) => file.endsWith('first-paint.css'))?.text.match(/#[0-9a-f]{6}/g);
  expect(first).toEqual([LIGHT.paper, LIGHT.ink, DARK.paper, DARK.ink].map((colour) => colour.toLowerCase()));
});
