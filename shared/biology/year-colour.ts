/** Paint of a queen by the last digit of her birth year; the code repeats every five years. */
export const YEAR_COLOURS = ['white', 'yellow', 'red', 'green', 'blue'] as const;
export type YearColour = (typeof YEAR_COLOURS)[number];

/**
 * The marking colour of a year: 1 and 6 white, 2 and 7 yellow, 3 and 8 red, 4 and 9 green, 5 and 0 blue.
 * International marking code as printed on tbbk.co.uk and seven more pages; no written standard was found.
 */
export function yearColour(year: number): YearColour {
  const place = (((year - 1) % YEAR_COLOURS.length) + YEAR_COLOURS.length) % YEAR_COLOURS.length;
  return YEAR_COLOURS[place] ?? 'white';
}
