import type { FileTrouble } from '../../shared/contract/import.ts';

/** How much is read of a file somebody hands over. A yard of fifty years stays far below each of these. */
export const FILE_LIMITS = {
  bytes: 20_000_000,
  /** Of a zip, all entries together, unpacked. */
  unpackedBytes: 100_000_000,
  zipEntries: 2000,
  rows: 20_000,
  columns: 200,
  cells: 1_000_000,
  cellSigns: 10_000,
  jsonDepth: 40,
} as const;

/** Thrown inside this folder only, and handed out as a value at its door. */
export class UnreadableFile extends Error {
  readonly trouble: FileTrouble;

  constructor(trouble: FileTrouble) {
    super(trouble.reason);
    this.trouble = trouble;
  }
}

export const unreadable = (reason: FileTrouble['reason'], figures: Omit<FileTrouble, 'reason'> = {}): UnreadableFile =>
  new UnreadableFile({ reason, ...figures });
