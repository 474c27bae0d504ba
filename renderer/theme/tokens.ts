/** The colours of the yard book on its two grounds. Contrast of every pair is computed in the tests. */
export interface Colours {
  readonly paper: string;
  readonly surface: string;
  readonly ink: string;
  readonly softInk: string;
  readonly rule: string;
  readonly faintRule: string;
  readonly accent: string;
  readonly onAccent: string;
  readonly focus: string;
  readonly good: string;
  readonly notice: string;
  readonly bad: string;
  readonly handsOff: string;
}

export const LIGHT: Colours = {
  paper: '#FBF8F1',
  surface: '#FFFFFF',
  ink: '#22201C',
  softInk: '#5A554C',
  rule: '#8A8377',
  faintRule: '#DDD6C6',
  accent: '#7A3B22',
  onAccent: '#FFFFFF',
  focus: '#0B5C63',
  good: '#1E6B3A',
  notice: '#7D5200',
  bad: '#A3201D',
  handsOff: '#1F4E8C',
};

export const DARK: Colours = {
  paper: '#1B1A17',
  surface: '#252420',
  ink: '#F1ECE1',
  softInk: '#B9B2A4',
  rule: '#7C766B',
  faintRule: '#3B3831',
  accent: '#E0A07F',
  onAccent: '#1B1A17',
  focus: '#7CC7CC',
  good: '#8CCF9E',
  notice: '#EBBE62',
  bad: '#F2958F',
  handsOff: '#9CC0F0',
};

/** A view on paper: black on white. Signs, words and textures carry what colour does on the screen. */
export const PAPER: Colours = {
  paper: '#FFFFFF',
  surface: '#FFFFFF',
  ink: '#000000',
  softInk: '#000000',
  rule: '#000000',
  faintRule: '#777777',
  accent: '#000000',
  onAccent: '#FFFFFF',
  focus: '#000000',
  good: '#000000',
  notice: '#000000',
  bad: '#000000',
  handsOff: '#000000',
};

/** Tones of the batch picture; each also has a texture and its word, since neighbours are close in lightness. */
export const STAGE_TONES = {
  egg: '#F6EFD9',
  larva: '#E9CF8A',
  sealed: '#C58F3C',
  ready: '#8F5A24',
  virgin: '#5B9BB5',
  laying: '#12504A',
} as const;

/** Series of a chart: safe for colour-blind eyes on paper; every series has its own marker besides. */
export const SERIES = ['#0072B2', '#D55E00', '#00785A', '#B0568A', '#8A6D00'] as const;
export const SERIES_DARK = ['#6FB7E9', '#F08A4B', '#5CC2A2', '#E29AC4', '#D9B84A'] as const;

/** Paint marks of a queen's year. Used for nothing else; letter and word always stand beside them. */
export const YEAR_PAINT = {
  white: { paint: '#FFFFFF', letter: '#22201C' },
  yellow: { paint: '#F2D33B', letter: '#22201C' },
  red: { paint: '#C3302B', letter: '#FFFFFF' },
  green: { paint: '#2F7D43', letter: '#FFFFFF' },
  blue: { paint: '#2B62B0', letter: '#FFFFFF' },
} as const;

export const FONTS = {
  text: '"Atkinson Hyperlegible Next Variable", system-ui, sans-serif',
  title: '"Source Serif 4 Variable", Georgia, serif',
  code: '"Atkinson Hyperlegible Mono", ui-monospace, monospace',
} as const;

export const cssVariables = (colours: Colours): Record<string, string> =>
  Object.fromEntries(
    Object.entries(colours).map(([name, value]) => [
      `--${name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`,
      value,
    ]),
  );
