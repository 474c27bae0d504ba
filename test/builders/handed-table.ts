import type { ImportTable } from '../../shared/contract/import.ts';

export const handed = (content: string | Uint8Array, name = 'table.csv') => ({
  name,
  base64: Buffer.from(content).toString('base64'),
});

/** How a table is taken in when nothing is said beyond the file and what its rows are. */
export const aTableChoice = (content: string | Uint8Array, changes: Partial<ImportTable> = {}): ImportTable => ({
  file: handed(content),
  kind: 'hives',
  sheet: null,
  columns: null,
  dayOrder: null,
  method: 'larva-grafting',
  boxType: 'mini',
  queenPlace: 'in-hive',
  leaveOut: false,
  ...changes,
});
