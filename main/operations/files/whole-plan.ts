import type { z } from 'zod';
import type { FileTrouble, ImportWorkbook, WholeProblem } from '../../../shared/contract/import.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { WHOLE_FORMAT, WHOLE_VERSION, WholeWorkbook } from '../../../shared/contract/whole-workbook.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { bytesOf } from '../../exchange/file-bytes.ts';
import { readJson } from '../../exchange/read-json.ts';
import type { Table, Tables } from '../../workbook/workbook.ts';
import type { Desk } from '../operation.ts';
import { wholeProblems } from './check-whole.ts';
import { WHOLE_KEYS } from './whole-workbook.ts';

type Key = (typeof WHOLE_KEYS)[number];
export type AnyRow = { readonly id: string };

/** A file of everything read and laid beside the workbook; nothing is written. */
export type WholePlan =
  | ({ readonly whole: WholeWorkbook; readonly added: readonly Placed[]; readonly changed: readonly Placed[] } & Told)
  | ({ readonly whole: null } & Told);

interface Told {
  readonly name: string;
  readonly exportedOn: string;
  readonly same: number;
  readonly problems: readonly WholeProblem[];
}

export interface Placed {
  readonly key: Key;
  readonly row: AnyRow;
}

export function planWhole(desk: Desk, { file }: z.infer<typeof ImportWorkbook>): Result<WholePlan, Refusal> {
  const read = readJson(bytesOf(file.base64));
  if (!read.ok) return unreadableFile(read.refusal);
  const head = headOf(read.value);
  if (!head) return unreadableFile({ reason: 'not-our-file' });
  if (head.version > WHOLE_VERSION) return unreadableFile({ reason: 'newer-form' });
  const parsed = WholeWorkbook.safeParse(read.value);
  if (!parsed.success) {
    const problems = parsed.error.issues.flatMap((issue) => notValid(read.value, issue.path));
    if (problems.length === 0) return unreadableFile({ reason: 'not-our-file' });
    return ok({ whole: null, ...head, same: 0, problems });
  }
  const whole = parsed.data;
  const { tables } = desk.workbook;
  const added: Placed[] = [];
  const changed: Placed[] = [];
  let same = 0;
  for (const key of WHOLE_KEYS) {
    for (const row of whole.tables[key]) {
      const here = tables[key].get(row.id);
      if (here === null) added.push({ key, row });
      else if (isSame(here, row)) same += 1;
      else changed.push({ key, row });
    }
  }
  return ok({ whole, ...head, added, changed, same, problems: wholeProblems(tables, whole) });
}

export const tableOf = (tables: Tables, key: Key): Table<AnyRow> => tables[key] as unknown as Table<AnyRow>;

const unreadableFile = (trouble: FileTrouble) => refuse({ kind: 'file-unreadable', field: 'file', trouble } as const);

/** What every such file says of itself, whatever else is wrong with it. */
function headOf(
  value: unknown,
): { readonly name: string; readonly exportedOn: string; readonly version: number } | null {
  if (typeof value !== 'object' || value === null) return null;
  const { format, version, name, exportedOn } = value as Readonly<Record<string, unknown>>;
  if (format !== WHOLE_FORMAT || typeof version !== 'number' || typeof name !== 'string') return null;
  return { name: name.slice(0, 60), exportedOn: String(exportedOn).slice(0, 10), version };
}

/** tables, batches, 3, code */
function notValid(value: unknown, path: readonly PropertyKey[]): readonly WholeProblem[] {
  const [part, table, index, field] = path;
  if (part !== 'tables' || typeof table !== 'string' || typeof index !== 'number') return [];
  const found = path.reduce<unknown>((inner, step) => valueAt(inner, step), value);
  const text = JSON.stringify(found ?? null).slice(0, 40);
  return [{ table, row: index + 1, kind: 'not-valid', field: String(field ?? 'id'), text }];
}

function valueAt(inner: unknown, step: PropertyKey): unknown {
  if (typeof inner !== 'object' || inner === null || !Object.hasOwn(inner, step)) return null;
  return (inner as Readonly<Record<PropertyKey, unknown>>)[step];
}

function isSame(here: AnyRow, row: AnyRow): boolean {
  const [one, other] = [here, row] as unknown as readonly Readonly<Record<string, unknown>>[];
  return Object.keys(row).every((field) => JSON.stringify(one?.[field]) === JSON.stringify(other?.[field]));
}
