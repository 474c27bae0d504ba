import type BetterSqlite3 from 'better-sqlite3';
import { COUNTED_STAGES, type CountedStage } from '../../../shared/model/batch.ts';
import type { BatchTally } from '../../../shared/model/tally.ts';
import type { ComparedTally, TallyTable } from '../workbook.ts';
import type { WriteGuard } from './define-table.ts';

const COLUMNS = `batch_id AS batchId, given, taken, entered_sealing AS enteredSealing, sealed, placed,
  emergence_known AS emergenceKnown, emerged, mating_known AS matingKnown, proved, laying`;

type SumColumn = `${CountedStage}_${'bars' | 'cells'}`;

type Stored = Omit<ComparedTally, 'practice'> & { practice: unknown };

/** SQLite has no true and false of its own. The row is ours alone, so it is turned in place. */
function withPractice(row: Stored): ComparedTally {
  row.practice = row.practice === 1;
  return row as ComparedTally;
}

/** One derived row per batch, written over whenever anything it sums up has changed. */
export function batchTallyTable(db: BetterSqlite3.Database, guardWrite: WriteGuard): TallyTable {
  const one = db.prepare<[string], BatchTally>(`SELECT ${COLUMNS} FROM batch_tally WHERE batch_id = ?`);
  const season = db.prepare<[number], BatchTally>(
    `SELECT ${COLUMNS} FROM batch_tally WHERE batch_id IN (SELECT id FROM batch WHERE season = ?)`,
  );
  const every = db.prepare<[], BatchTally>(`SELECT ${COLUMNS} FROM batch_tally ORDER BY rowid`);
  const compared = db.prepare<{ readonly season: number | null }, Stored>(`
    SELECT id, id AS batchId, season, practice, method, method_copy_id AS methodCopyId, builder_id AS builderId,
      breeder_id AS breederId, given, taken, entered_sealing AS enteredSealing, sealed, coalesce(placed, 0) AS placed,
      coalesce(emergence_known, 0) AS emergenceKnown, coalesce(emerged, 0) AS emerged,
      coalesce(mating_known, 0) AS matingKnown, coalesce(proved, 0) AS proved, coalesce(laying, 0) AS laying
    FROM batch LEFT JOIN batch_tally ON batch_id = id WHERE @season IS NULL OR season = @season ORDER BY batch.rowid`);
  const put = db.prepare<BatchTally>(`
    INSERT INTO batch_tally (batch_id, given, taken, entered_sealing, sealed, placed, emergence_known, emerged,
      mating_known, proved, laying)
    VALUES (@batchId, @given, @taken, @enteredSealing, @sealed, @placed, @emergenceKnown, @emerged,
      @matingKnown, @proved, @laying)
    ON CONFLICT (batch_id) DO UPDATE SET given = excluded.given, taken = excluded.taken,
      entered_sealing = excluded.entered_sealing, sealed = excluded.sealed, placed = excluded.placed,
      emergence_known = excluded.emergence_known, emerged = excluded.emerged, mating_known = excluded.mating_known,
      proved = excluded.proved, laying = excluded.laying`);
  const remove = db.prepare<[string]>('DELETE FROM batch_tally WHERE batch_id = ?');
  return {
    get: (batchId) => one.get(batchId) ?? null,
    put(tally) {
      guardWrite();
      put.run(tally);
    },
    barSums: barSumsOf(db),
    ofSeason: (year) => season.all(year),
    remove(batchId) {
      guardWrite();
      remove.run(batchId);
    },
    all: () => every.all(),
    forComparing: (of) => compared.all({ season: of }).map(withPractice),
  };
}

function barSumsOf(db: BetterSqlite3.Database): TallyTable['barSums'] {
  const summed = db.prepare<{ readonly batchId: string }, Record<'bars' | SumColumn, number>>(
    `SELECT (SELECT count(*) FROM bar WHERE batch_id = @batchId) AS bars, ${COUNTED_STAGES.map(
      (stage) => `count(*) FILTER (WHERE stage = '${stage}') AS ${stage}_bars,
        coalesce(sum(cells) FILTER (WHERE stage = '${stage}'), 0) AS ${stage}_cells`,
    ).join(', ')} FROM "count" WHERE batch_id = @batchId`,
  );
  return (batchId) => {
    const sums = summed.get({ batchId });
    if (sums === undefined) return { bars: 0, stages: {} };
    const stages = COUNTED_STAGES.map((stage) => [
      stage,
      { bars: sums[`${stage}_bars`], cells: sums[`${stage}_cells`] },
    ]);
    return { bars: sums.bars, stages: Object.fromEntries(stages) };
  };
}
