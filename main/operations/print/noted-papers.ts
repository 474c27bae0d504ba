import { z } from 'zod';
import type { Id } from '../../../shared/kernel/id.ts';
import { IdField, IsoDayField } from '../../../shared/model/fields.ts';
import type { JournalChange, StoredRow } from '../../../shared/model/journal.ts';
import { NotedPaper, type PaperName } from '../../../shared/model/noted-paper.ts';
import type { Owner } from '../../workbook/journal/journal-steps.ts';
import type { SettingTable, Tables, Workbook } from '../../workbook/workbook.ts';
import { PRINTED_PAPERS } from '../workbook-marks.ts';

/** A paper that went to the printer, with the newest step of the journal that it can know of, and its records then. */
const Note = z.object({
  of: NotedPaper,
  printedOn: IsoDayField,
  step: z.number().int().nonnegative(),
  records: z.array(IdField),
  /** The queens that sat in its hives: where one went to is a row of hers, no longer of the hive. */
  queens: z.array(IdField).default([]),
});
export type PaperNote = z.infer<typeof Note>;

/** So many papers are watched; the oldest give way. */
const MOST = 60;

/** The papers noted as printed, latest first; a note that does not fit (any longer) counts as none. */
export function notedPapers(settings: SettingTable): readonly PaperNote[] {
  const parsed = z.array(Note).safeParse(settings.get(PRINTED_PAPERS));
  return parsed.success ? parsed.data : [];
}

/** The latest print of a paper is the one that counts. */
export function keepNote(settings: SettingTable, note: PaperNote): void {
  const others = notedPapers(settings).filter(({ of }) => !isSamePaper(of, note.of));
  settings.put(PRINTED_PAPERS, [note, ...others].slice(0, MOST));
}

export const isSamePaper = (one: NotedPaper, other: NotedPaper): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

/** How it is called in words of the workbook; null when what it was made of is gone. */
export function nameOfPaper(tables: Tables, of: NotedPaper): PaperName | null {
  const { paper } = of;
  switch (paper) {
    case 'queen-card':
      return named(paper, tables.queens.get(of.queenId)?.number);
    case 'hive-page':
      return named(paper, tables.colonies.get(of.colonyId)?.code);
    case 'inspector-pages': {
      const { yardId, year } = of;
      if (yardId === null) return { paper, name: null, year };
      return named(paper, tables.yards.get(yardId)?.name, year);
    }
    case 'season-report':
      return tables.batches.where({ season: of.season }).length > 0 ? { paper, name: null, year: of.season } : null;
  }
}

const named = (paper: PaperName['paper'], name: string | undefined, year: number | null = null): PaperName | null =>
  name === undefined ? null : { paper, name, year };

/** Tables of which a paper says nothing, though their rows belong to its records. */
const NOT_SAID: Readonly<Record<NotedPaper['paper'], readonly string[]>> = {
  'queen-card': ['follow_up', 'queen_feedback'],
  'hive-page': ['follow_up'],
  'inspector-pages': ['follow_up', 'queen_feedback', 'feeding'],
  'season-report': [],
};

/**
 * Whether anything a paper says was changed since, by the journal: a row that was changed and changed back counts as
 * unchanged. Of a year's pages only rows of that year count, and rows without a day.
 */
export function isChangedSince({ journal, tables }: Workbook, { of, step, records, queens }: PaperNote): boolean {
  const said = (change: JournalChange) =>
    !NOT_SAID[of.paper].includes(change.table) && (of.paper !== 'inspector-pages' || isOfYear(change, of.year));
  // Those it was made of, and those it would be made of now.
  const ids = new Set([...records, ...recordsOf(tables, of)]);
  const changes = [
    ...[...ids].flatMap((id) => journal.changesSince(step, { id, column: OWNER[of.paper] })),
    ...queens.flatMap((id) => journal.changesSince(step, { id, column: 'queen_id' }).filter(isStay)),
  ];
  // A row that left a hive is found by its queen, one that came back by both: each change counts once, in its order.
  const each = new Map(changes.filter(said).map((change) => [change.id, change]));
  return differsNow([...each.values()].toSorted((one, other) => one.id - other.id));
}

/** Where a queen is, and went. */
const isStay = ({ table }: JournalChange): boolean => table === 'queen' || table === 'queen_move';

const OWNER: Readonly<Record<NotedPaper['paper'], Owner['column']>> = {
  'queen-card': 'queen_id',
  'hive-page': 'colony_id',
  'inspector-pages': 'colony_id',
  'season-report': 'batch_id',
};

/** The queen, hives or batches it speaks of. */
export function recordsOf({ colonies, batches }: Tables, of: NotedPaper): readonly Id[] {
  switch (of.paper) {
    case 'queen-card':
      return [of.queenId];
    case 'hive-page':
      return [of.colonyId];
    case 'inspector-pages':
      return colonies.where(of.yardId === null ? {} : { yardId: of.yardId }).map(({ id }) => id);
    case 'season-report':
      return batches.where({ season: of.season }).map(({ id }) => id);
  }
}

/** Those that sit in its hives; none where it speaks of no hive. */
export function queensOf(tables: Tables, of: NotedPaper): readonly Id[] {
  if (OWNER[of.paper] !== 'colony_id') return [];
  return recordsOf(tables, of).flatMap((colonyId) => tables.queens.where({ colonyId }).map(({ id }) => id));
}

/** Oldest first: what each row was before the first change, against what it is after the last. */
function differsNow(changes: readonly JournalChange[]): boolean {
  const rows = new Map<string, { before: StoredRow | null; now: StoredRow | null }>();
  for (const change of changes) {
    const row = `${change.table} ${change.rowId}`;
    rows.set(row, { before: rows.has(row) ? (rows.get(row)?.before ?? null) : change.old, now: change.new });
  }
  return [...rows.values()].some(({ before, now }) => JSON.stringify(before) !== JSON.stringify(now));
}

function isOfYear({ old, new: now }: JournalChange, year: number): boolean {
  const days = [old, now].flatMap((row) => Object.entries(row ?? {})).filter(([column]) => column.endsWith('_on'));
  const written = days.flatMap(([, day]) => (day === null ? [] : [String(day)]));
  return written.length === 0 || written.some((day) => day.startsWith(`${year}-`));
}
