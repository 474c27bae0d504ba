import {
  type DayOrder,
  IMPORT_FIELDS,
  type ImportField,
  type ImportKind,
  NEEDED_FIELDS,
} from '../../../shared/contract/import.ts';
import { LANGUAGES } from '../../../shared/kernel/language.ts';
import { GUESSES, wordsOf } from '../../../shared/text/catalogue.ts';
import type { RawTable } from '../../exchange/read-table.ts';
import { plainLetters, THREE_NUMBERS } from './row-reader.ts';

/** For each column of the file the field its heading suggests; a field is given once. */
export function guessColumns(headings: readonly string[], kind: ImportKind): readonly (ImportField | null)[] {
  const fields: readonly ImportField[] = IMPORT_FIELDS[kind];
  const guessed: (ImportField | null)[] = headings.map(() => null);
  const give = (matches: (field: ImportField, heading: string) => boolean) => {
    for (const [index, heading] of headings.entries()) {
      const field = fields.find((one) => !guessed.includes(one) && matches(one, plainLetters(heading)));
      if (guessed[index] === null && field) guessed[index] = field;
    }
  };
  // Plain names first, so that "queen" does not take the place of "number" where both are there.
  give((field, heading) => plainLetters(field) === heading || namesOf(field).includes(heading));
  give((field, heading) => GUESSES.some((guesses) => guesses[field]?.includes(heading) ?? false));
  return guessed;
}

/** What the page calls a field in each language. */
const namesOf = (field: ImportField): readonly string[] =>
  LANGUAGES.map((language) => plainLetters(wordsOf(language).importFields[field]));

export const columnsByField = (columns: readonly (ImportField | null)[]): ReadonlyMap<ImportField, number> =>
  new Map(columns.flatMap((field, index) => (field === null ? [] : [[field, index] as const])));

export const missingFields = (columns: readonly (ImportField | null)[], kind: ImportKind): readonly ImportField[] =>
  NEEDED_FIELDS[kind].filter((field) => !columns.includes(field));

const DAY_FIELDS: readonly ImportField[] = ['markedOn', 'firstEggsOn', 'provedOn', 'larvaeGivenOn', 'countedOn', 'day'];

/** How the days of a table are written, as far as they tell: a part above 12 cannot be a month. */
export function guessDayOrder(
  table: RawTable,
  columns: readonly (ImportField | null)[],
): { readonly order: DayOrder | null; readonly unclear: boolean } {
  const dayColumns = columns.flatMap((field, index) => (field && DAY_FIELDS.includes(field) ? [index] : []));
  const short = table.rows
    .flatMap(({ cells }) => dayColumns.map((index) => THREE_NUMBERS.exec(cells[index] ?? '')))
    .filter((parts) => parts !== null && (parts[1]?.length ?? 0) <= 2);
  if (short.length === 0) return { order: null, unclear: false };
  const numbers = (place: 1 | 2) => short.map((parts) => Number(parts?.[place]));
  if (numbers(1).some((first) => first > 31)) return { order: 'year-first', unclear: false };
  const dayFirst = numbers(1).some((first) => first > 12);
  const monthFirst = numbers(2).some((second) => second > 12);
  if (dayFirst !== monthFirst) return { order: dayFirst ? 'day-first' : 'month-first', unclear: false };
  return { order: null, unclear: true };
}
