import type { DayOrder, ImportField, RowProblem } from '../../../shared/contract/import.ts';
import { type Day, dateOfDay, dayOfDate, type IsoDay, isIsoDay, isoOfDay } from '../../../shared/kernel/day.ts';
import { LANGUAGES } from '../../../shared/kernel/language.ts';
import { wordsOf } from '../../../shared/text/catalogue.ts';
import type { Words } from '../../../shared/text/english/english.ts';
import { parseDay } from '../../../shared/text/parse-day.ts';
import type { RawRow } from '../../exchange/read-table.ts';

export interface Reading {
  readonly columns: ReadonlyMap<ImportField, number>;
  readonly dayOrder: DayOrder;
  readonly today: Day;
}

const SHOWN_SIGNS = 40;

/**
 * What is left of letters that were saved in one encoding and read in another: the sign that stands for a lost one
 * (U+FFFD), signs that no keyboard makes (U+0080 to U+009F), and the two or three signs that UTF-8 becomes in
 * Windows-1252, of which the first is always one of these.
 */
const LOST_LETTERS = /[\u0080-\u009f\ufffd]|[ÃÅÄ][\u00a0-\u00bf]|[ÃÅÄ][€‚ƒ„…†‡ˆ‰‹‘’“”•–—˜™›]|â€/;

/** Reads the cells of one row into values. What cannot be read is null and noted with field and reason. */
export class RowReader {
  readonly problems: RowProblem[] = [];
  readonly number: number;
  readonly #cells: readonly string[];
  readonly #reading: Reading;

  constructor(row: RawRow, reading: Reading) {
    this.number = row.number;
    this.#cells = row.cells;
    this.#reading = reading;
  }

  raw(field: ImportField): string {
    const column = this.#reading.columns.get(field);
    return column === undefined ? '' : (this.#cells[column] ?? '');
  }

  text(field: ImportField, most: number): string | null {
    const text = this.raw(field);
    if (text.length > most) return this.note(field, 'too-long', most);
    if (LOST_LETTERS.test(text)) return this.note(field, 'letters-lost');
    return text === '' ? null : text;
  }

  needed(field: ImportField, most: number): string | null {
    return this.raw(field) === '' ? this.note(field, 'empty') : this.text(field, most);
  }

  wholeNumber(field: ImportField, least: number, most: number): number | null {
    const text = this.raw(field);
    if (text === '') return null;
    // Spreadsheets write a whole number as 12 or 12.0.
    const number = /^\d{1,9}([.,]0+)?$/.test(text) ? Number.parseInt(text, 10) : Number.NaN;
    return number >= least && number <= most ? number : this.note(field, 'not-a-number', most);
  }

  /** A number with a point or a comma, between two limits. */
  figure(field: ImportField, [least, most]: readonly [number, number]): number | null {
    const text = this.raw(field);
    if (text === '') return null;
    const number = /^[-−]?\d{1,4}([.,]\d{1,6})?$/.test(text)
      ? Number(text.replace('−', '-').replace(',', '.'))
      : Number.NaN;
    return number >= least && number <= most ? number : this.note(field, 'not-a-figure', most);
  }

  day(field: ImportField): IsoDay | null {
    const text = this.raw(field);
    if (text === '') return null;
    return readDay(text, this.#reading.dayOrder, this.#reading.today) ?? this.note(field, 'not-a-day');
  }

  /** One of a list, by its own word or by what the page calls it in any language. */
  choice<Choice extends string>(
    field: ImportField,
    list: (words: Words) => Readonly<Record<Choice, Word>>,
  ): Choice | null {
    const text = this.raw(field);
    if (text === '') return null;
    const typed = plainLetters(text);
    const found = LANGUAGES.flatMap((language) => Object.entries(list(wordsOf(language))) as [Choice, Word][]).find(
      ([choice, word]) => plainLetters(choice) === typed || plainLetters(nameOf(word)) === typed,
    );
    return found ? found[0] : this.note(field, 'not-a-choice');
  }

  note(field: ImportField, kind: RowProblem['kind'], other: number | null = null): null {
    this.problems.push({ row: this.number, field, kind, text: this.raw(field).slice(0, SHOWN_SIGNS), other });
    return null;
  }
}

/** A word of the page, alone or with a line that explains it. */
type Word = string | { readonly name: string };
const nameOf = (word: Word): string => (typeof word === 'string' ? word : word.name);

/** Letters and digits only, so that "Mother line", "mother_line" and "motherLine" are one. */
export const plainLetters = (text: string): string =>
  text
    .normalize('NFC')
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]/gu, '');

/** Three numbers with something between them. */
export const THREE_NUMBERS = /^(\d{1,4})\s*[./\- ]\s*(\d{1,2})\s*[./\- ]\s*(\d{1,4})\.?(?:[ T]\d{1,2}:.*)?$/;

/** A day with its year, as people write it. A year of four digits in front decides by itself; else `order` does. */
export function readDay(text: string, order: DayOrder, today: Day): IsoDay | null {
  if (isIsoDay(text)) return text;
  const parts = THREE_NUMBERS.exec(text);
  if (!parts) return /\p{L}/u.test(text) && /\d{4}/.test(text) ? parseDay(text, today) : null;
  const [, first = '', second = '', third = ''] = parts;
  const yearInFront = first.length > 2 || (order === 'year-first' && third.length <= 2);
  const [year, month, dayOfMonth] = yearInFront
    ? [first, second, third]
    : order === 'month-first'
      ? [third, first, second]
      : [third, second, first];
  return realDay(yearOf(year), Number(month), Number(dayOfMonth));
}

const yearOf = (digits: string): number => (digits.length <= 2 ? 2000 + Number(digits) : Number(digits));

function realDay(year: number, month: number, dayOfMonth: number): IsoDay | null {
  if (year < 1950 || year > 2200 || month < 1 || month > 12 || dayOfMonth < 1 || dayOfMonth > 31) return null;
  const day = dayOfDate({ year, month, dayOfMonth });
  return dateOfDay(day).dayOfMonth === dayOfMonth ? isoOfDay(day) : null;
}
