import type BetterSqlite3 from 'better-sqlite3';
import { RATE_STAGES, type RateStage } from '../../../shared/contract/season.ts';
import type { GroupSum, SeasonSumTable, StageSum } from '../workbook.ts';

const PARTS = ['came', 'went_in', 'counted'] as const;
const SUM_COLUMNS = RATE_STAGES.flatMap((stage) => PARTS.map((part) => `${stage}_${part}`));

/** Tables whose rows belong to a batch and can change its sums, or the month or box type it counts under. */
const OF_A_BATCH = ['batch_tally', 'placement', 'step_done', 'step_move', 'observation'] as const;

/**
 * The sums of each season, kept while the file is open and beside it, never in it. Triggers throw a season's sums away in
 * the transaction that changes what they were made of, so that undo, import and a change that fails keep them true.
 */
export function seasonSumTable(db: BetterSqlite3.Database): SeasonSumTable {
  const made = onFirstUse(() => {
    db.pragma('temp_store = MEMORY');
    db.exec(TABLE);
    for (const trigger of TRIGGERS) db.exec(trigger);
    return statementsOf(db);
  });
  return {
    seasons: () => made().seasons.all(),
    missing: (question) => made().missing.all(question),
    keep(question, sums) {
      const { put } = made();
      for (const { season, practice, level, other, batches, stages } of sums)
        put.run(
          question,
          season,
          Number(practice),
          level,
          other,
          batches,
          ...RATE_STAGES.flatMap((stage) => [stages[stage].successes, stages[stage].of, stages[stage].batches]),
        );
    },
    sums: (question, season, leaveOutPractice) =>
      made()
        .sums.all({ question, season, most: leaveOutPractice ? 0 : 1 })
        .map(groupSum),
    kept: (question) => made().kept.get(question) ?? 0,
  };
}

function onFirstUse<Value>(make: () => Value): () => Value {
  let value: Value | null = null;
  return () => {
    value ??= make();
    return value;
  };
}

const TABLE = `
  CREATE TEMP TABLE season_sum (
    question TEXT NOT NULL, level TEXT NOT NULL, other TEXT NOT NULL, season INTEGER NOT NULL, practice INTEGER NOT NULL,
    batches INTEGER NOT NULL, ${SUM_COLUMNS.map((column) => `${column} NOT NULL`).join(', ')},
    PRIMARY KEY (question, level, other, season, practice)
  ) WITHOUT ROWID;
  CREATE INDEX temp.season_sum_season ON season_sum (season, question);`;

const trigger = (event: string, table: string, what: string) => `
  CREATE TEMP TRIGGER "season_sum_${event.split(' ')[0]}_${table}" AFTER ${event} ON main."${table}" BEGIN
    DELETE FROM season_sum${what};
  END;`;
const ofSeason = (season: string) => ` WHERE season IN (${season})`;
const ofBatch = (...ids: readonly string[]) =>
  ofSeason(`SELECT season FROM batch WHERE id IN (${ids.map((id) => `${id}.batch_id`).join(', ')})`);

const TRIGGERS: readonly string[] = [
  trigger('INSERT', 'batch', ofSeason('NEW.season')),
  trigger('UPDATE', 'batch', ofSeason('OLD.season, NEW.season')),
  trigger('DELETE', 'batch', ofSeason('OLD.season')),
  ...OF_A_BATCH.flatMap((table) => [
    trigger('INSERT', table, ofBatch('NEW')),
    trigger('UPDATE', table, ofBatch('OLD', 'NEW')),
    trigger('DELETE', table, ofBatch('OLD')),
  ]),
  trigger('UPDATE OF box_type', 'mating_box', ''),
  trigger('UPDATE', 'method_copy', ''),
];

/** The seasons there are, each found by one step in the index: no batch is read. */
const SEASONS = `
  WITH RECURSIVE found (season) AS (
    SELECT min(season) FROM batch
    UNION ALL SELECT (SELECT min(season) FROM batch WHERE season > found.season) FROM found WHERE season IS NOT NULL
  )
  SELECT season FROM found WHERE season IS NOT NULL`;

interface Asked {
  readonly question: string;
  readonly season: number | null;
  readonly most: number;
}

type Summed = readonly (string | number)[];

const statementsOf = (db: BetterSqlite3.Database) => ({
  seasons: db.prepare<[], number>(SEASONS).pluck(),
  missing: db
    .prepare<[string], number>(
      `${SEASONS} AND NOT EXISTS (SELECT 1 FROM season_sum AS s WHERE s.season = found.season AND s.question = ?)`,
    )
    .pluck(),
  put: db.prepare(`
    INSERT INTO season_sum (question, season, practice, level, other, batches, ${SUM_COLUMNS.join(', ')})
    VALUES (?, ?, ?, ?, ?, ?, ${SUM_COLUMNS.map(() => '?').join(', ')})`),
  sums: db
    .prepare<Asked, Summed>(
      `SELECT level, other, sum(batches), ${SUM_COLUMNS.map((column) => `sum(${column})`).join(', ')} FROM season_sum
       WHERE question = @question AND (@season IS NULL OR season = @season) AND practice <= @most GROUP BY level, other`,
    )
    .raw(),
  kept: db.prepare<[string], number>('SELECT count(*) FROM season_sum WHERE question = ?').pluck(),
});

function groupSum([level, other, batches, ...sums]: Summed): GroupSum {
  const stages = RATE_STAGES.map((stage, index): [RateStage, StageSum] => {
    const [successes, of, counted] = sums.slice(PARTS.length * index, PARTS.length * (index + 1)).map(Number);
    return [stage, { successes: successes ?? 0, of: of ?? 0, batches: counted ?? 0 }];
  });
  return {
    level: String(level),
    other: String(other),
    batches: Number(batches),
    stages: Object.fromEntries(stages) as GroupSum['stages'],
  };
}
