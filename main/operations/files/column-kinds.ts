import type { Cell, CellKind } from '../../../shared/contract/exchange.ts';
import type { Tables } from '../../workbook/workbook.ts';

/** One column of a sheet: its kind, unit, the words it may hold, and its cell in a row. */
export interface ColumnOf<Row> {
  readonly kind: CellKind;
  readonly unit: string;
  readonly choices: readonly string[];
  cell(row: Row, tables: Tables): Cell;
}

type CellOf<Row> = (row: Row, tables: Tables) => Cell;
export const column = <Row>(
  kind: CellKind,
  cell: CellOf<Row>,
  unit = '',
  choices: readonly string[] = [],
): ColumnOf<Row> => ({
  kind,
  unit,
  choices,
  cell,
});
export const text = <Row>(cell: CellOf<Row>) => column('text', cell);
export const day = <Row>(cell: CellOf<Row>) => column('day', cell);
export const number = <Row>(cell: CellOf<Row>, unit = '') => column('number', cell, unit);
export const choice = <Row>(choices: readonly string[], cell: CellOf<Row>) => column('choice', cell, '', choices);

export const yardName = (tables: Tables, id: string | null) =>
  id === null ? null : (tables.yards.get(id)?.name ?? null);
export const hiveCode = (tables: Tables, id: string | null) =>
  id === null ? null : (tables.colonies.get(id)?.code ?? null);
export const batchCode = (tables: Tables, id: string | null) =>
  id === null ? null : (tables.batches.get(id)?.code ?? null);
export const boxCode = (tables: Tables, id: string | null) =>
  id === null ? null : (tables.boxes.get(id)?.code ?? null);
export const barNumber = (tables: Tables, id: string | null) =>
  id === null ? null : (tables.bars.get(id)?.number ?? null);
export const placementOf = (tables: Tables, id: string | null) => (id === null ? null : tables.placements.get(id));

export const queenNumber = (tables: Tables, id: string | null) =>
  id === null ? null : (tables.queens.get(id)?.number ?? null);
