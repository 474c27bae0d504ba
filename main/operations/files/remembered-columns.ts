import { z } from 'zod';
import { IMPORT_FIELDS, type ImportField, type ImportKind } from '../../../shared/contract/import.ts';
import type { SettingTable } from '../../workbook/workbook.ts';
import { plainLetters } from './row-reader.ts';

/** Heading in plain letters, and the field it was taken for; null = left out on purpose. */
const Remembered = z.array(z.tuple([z.string().max(200), z.string().nullable()])).max(200);

const keyOf = (kind: ImportKind): string => `importColumns:${kind}`;

/** Keeps how the columns of a table were matched, for the next table with the same headings. */
export function rememberColumns(
  settings: SettingTable,
  kind: ImportKind,
  headings: readonly string[],
  columns: readonly (ImportField | null)[],
): void {
  const pairs = headings.map(
    (heading, index) => [plainLetters(heading).slice(0, 200), columns[index] ?? null] as const,
  );
  settings.put(keyOf(kind), pairs);
}

/** The match of a table with the very same headings; null when the last one had others. */
export function rememberedColumns(
  settings: SettingTable,
  kind: ImportKind,
  headings: readonly string[],
): readonly (ImportField | null)[] | null {
  const stored = Remembered.safeParse(settings.get(keyOf(kind)));
  if (!stored.success || stored.data.length !== headings.length) return null;
  const isSame = stored.data.every(([heading], index) => heading === plainLetters(headings[index] ?? ''));
  const fields: readonly ImportField[] = IMPORT_FIELDS[kind];
  return isSame ? stored.data.map(([, field]) => fields.find((one) => one === field) ?? null) : null;
}
