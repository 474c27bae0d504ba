import type BetterSqlite3 from 'better-sqlite3';
import type { Id } from '../../../shared/kernel/id.ts';
import type { Table, Tables } from '../workbook.ts';
import { barTable } from './bar-table.ts';
import { batchTable } from './batch-table.ts';
import { batchTallyTable } from './batch-tally-table.ts';
import { boxLookTable } from './box-look-table.ts';
import { calendarExportTable } from './calendar-export-table.ts';
import { colonyMoveTable } from './colony-move-table.ts';
import { colonyRoleTable } from './colony-role-table.ts';
import { colonyTable } from './colony-table.ts';
import { countTable } from './count-table.ts';
import { defineTable, type TableShape, type WriteGuard } from './define-table.ts';
import { feedingTable } from './feeding-table.ts';
import { followUpTable } from './follow-up-table.ts';
import { hiveLookTable } from './hive-look-table.ts';
import { labelPrintTable } from './label-print-table.ts';
import { lossTable } from './loss-table.ts';
import { matingBoxTable } from './mating-box-table.ts';
import { methodCopyTable } from './method-copy-table.ts';
import { observationTable } from './observation-table.ts';
import { placementTable } from './placement-table.ts';
import { queenFeedbackTable } from './queen-feedback-table.ts';
import { queenMoveTable } from './queen-move-table.ts';
import { queenPromiseTable } from './queen-promise-table.ts';
import { queenTable } from './queen-table.ts';
import { seasonSumTable } from './season-sum-table.ts';
import { settingTable } from './setting-table.ts';
import { stepDoneTable } from './step-done-table.ts';
import { stepDropTable } from './step-drop-table.ts';
import { stepMoveTable } from './step-move-table.ts';
import { stockScoreTable } from './stock-score-table.ts';
import { stockTestTable } from './stock-test-table.ts';
import { treatmentTable } from './treatment-table.ts';
import { weatherTable } from './weather-table.ts';
import { wishTable } from './wish-table.ts';
import { yardTable } from './yard-table.ts';

/** All tables of one open file. `guardWrite` is asked before every write. */
export function tablesOf(db: BetterSqlite3.Database, guardWrite: WriteGuard): Tables {
  const table = <Row extends { readonly id: Id }>(shape: TableShape<Row>): Table<Row> =>
    defineTable(db, shape, guardWrite);
  return {
    yards: table(yardTable),
    colonies: table(colonyTable),
    colonyRoles: table(colonyRoleTable),
    methodCopies: table(methodCopyTable),
    batches: table(batchTable),
    bars: table(barTable),
    counts: table(countTable),
    stepsDone: table(stepDoneTable),
    stepMoves: table(stepMoveTable),
    stepDrops: table(stepDropTable),
    losses: table(lossTable),
    observations: table(observationTable),
    boxes: table(matingBoxTable),
    placements: table(placementTable),
    boxLooks: table(boxLookTable),
    hiveLooks: table(hiveLookTable),
    queens: table(queenTable),
    queenMoves: table(queenMoveTable),
    queenFeedback: table(queenFeedbackTable),
    followUps: table(followUpTable),
    stockScores: table(stockScoreTable),
    stockTests: table(stockTestTable),
    feedings: table(feedingTable),
    treatments: table(treatmentTable),
    colonyMoves: table(colonyMoveTable),
    labelPrints: table(labelPrintTable),
    calendarExports: table(calendarExportTable),
    tallies: batchTallyTable(db, guardWrite),
    seasonSums: seasonSumTable(db),
    weather: weatherTable(db, guardWrite),
    wishes: table(wishTable),
    queenPromises: table(queenPromiseTable),
    settings: settingTable(db, guardWrite),
  };
}
