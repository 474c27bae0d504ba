import type { ImportKind, ImportTable, RowProblem } from '../../../shared/contract/import.ts';
import type { RawRow } from '../../exchange/read-table.ts';
import type { Desk } from '../operation.ts';
import type { Draft, DraftSetting } from './draft.ts';
import { draftCounts } from './draft-counts.ts';
import { draftBox, draftHive } from './draft-places.ts';
import { draftQueen } from './draft-queen.ts';
import { draftWeather } from './draft-weather.ts';
import { type Reading, RowReader } from './row-reader.ts';

export interface Drafts {
  readonly ready: readonly Draft[];
  /** By row. */
  readonly problems: readonly RowProblem[];
  readonly problemRows: number;
  /** Yards that rows name and the workbook does not have. */
  readonly newYards: readonly string[];
}

const DRAFT_ROW: Readonly<Record<ImportKind, (row: RowReader, setting: DraftSetting) => Draft | null>> = {
  hives: draftHive,
  boxes: draftBox,
  queens: draftQueen,
  counts: draftCounts,
  weather: draftWeather,
};

/** Every row read and checked against the workbook and the rows before it; nothing is written. */
export function draftRows(desk: Desk, rows: readonly RawRow[], choice: ImportTable, reading: Reading): Drafts {
  const { tables } = desk.workbook;
  const setting: DraftSetting = {
    tables,
    ids: desk.ids,
    choice,
    seen: new Map(),
    lastWalkOrder: Math.max(0, ...tables.boxes.all().map(({ walkOrder }) => walkOrder)),
  };
  const ready: Draft[] = [];
  const problems: RowProblem[] = [];
  let problemRows = 0;
  for (const raw of rows) {
    const row = new RowReader(raw, reading);
    const draft = DRAFT_ROW[choice.kind](row, setting);
    if (draft && row.problems.length === 0) ready.push(draft);
    else problemRows += 1;
    problems.push(...row.problems);
  }
  const known = new Set(tables.yards.all().map(({ name }) => name));
  const named = new Set(ready.flatMap(({ yard }) => yard ?? []));
  return { ready, problems, problemRows, newYards: [...named].filter((name) => !known.has(name)) };
}
