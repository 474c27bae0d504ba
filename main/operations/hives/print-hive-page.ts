import type { z } from 'zod';
import type { HiveDetail } from '../../../shared/contract/hives.ts';
import type { PrintHivePage } from '../../../shared/contract/papers.ts';
import type { PaperFile } from '../../../shared/contract/print.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { HiveRecords } from '../../../shared/contract/stock.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Words } from '../../../shared/text/english/english.ts';
import { type FlowingPaper, flowingPaper } from '../../paper/flowing-paper.ts';
import type { FlowTable } from '../../paper/flowing-table.ts';
import type { Desk } from '../operation.ts';
import { paperFile, paperFoot } from '../paper-file.ts';
import { workbookWords } from '../workbook-words.ts';
import { getHive } from './get-hive.ts';
import { getHiveRecords } from './get-hive-records.ts';
import { feedingTable, looksTable, movesTable, treatmentsTable, type Writing, writingOf } from './hive-paper-tables.ts';
import { missingTests, scoresTable, testsTable } from './stock-paper-tables.ts';

/** Everything written down about one hive, as a paper. */
export async function printHivePage(
  desk: Desk,
  { colonyId, paper, large }: z.infer<typeof PrintHivePage>,
): Promise<Result<PaperFile, Refusal>> {
  const hive = getHive(desk, { colonyId });
  if (!hive) return refuse({ kind: 'hive-missing', field: 'colonyId' });
  const records = getHiveRecords(desk, { colonyId });
  const { treatments, moves, queens } = records;
  const feedings = desk.workbook.tables.feedings.where({ colonyId }).toSorted((a, b) => (a.fedOn < b.fedOn ? 1 : -1));
  const { hives: hiveWords } = workbookWords(desk);
  const writing = writingOf(desk);
  const { words, columns } = writing;
  const { headings, none } = words;
  const name = [hive.code, hive.name].filter(Boolean).join(' ');
  const page = flowingPaper({ ...paperFoot(desk), title: words.hive.title(name), paper, large });
  page.heading(words.hive.title(name), 'H1');
  const line = hive.motherLine ? `${hiveWords.line} ${hive.motherLine}` : null;
  page.paragraph(words.hive.stands([hive.yard, hive.place, line].filter(Boolean).join(', ') || words.hive.nowhere));
  putRoles(page, hive.rolesBySeason, workbookWords(desk));
  putTable(
    page,
    headings.treatments,
    treatmentsTable(
      treatments.map((row) => ({ hive: null, row })),
      writing,
    ),
    none.treatments,
  );
  putTable(page, headings.feeding, feedingTable(feedings, writing), none.feeding);
  putTable(
    page,
    headings.moves,
    movesTable(
      moves.map((row) => ({ hive: null, row })),
      writing,
    ),
    none.moves,
  );
  const stays: FlowTable = {
    columns: [columns.queen, columns.from, columns.to].map((title) => ({ title })),
    rows: queens.map(({ number, from, until }) => [number, writing.day(from), writing.dayOrBlank(until)]),
  };
  putTable(page, headings.queens, stays, none.queens);
  putTable(page, headings.looks, looksTable(hive.looks, writing), none.looks);
  putStock(page, records, workbookWords(desk).stock, writing);
  page.paragraph(words.key);
  return ok(paperFile(words.hive.file(hive.code), await page.finish()));
}

function putRoles(page: FlowingPaper, seasons: HiveDetail['rolesBySeason'], { hives, hivePapers }: Words): void {
  if (seasons.length === 0) return;
  page.heading(hivePapers.headings.roles, 'H2');
  page.list(
    seasons.map(({ season, roles }) =>
      hivePapers.hive.roles(season, roles.map((role) => hives.roles[role]).join(', ')),
    ),
  );
}

/** Scores with their n, then tests, and what was never scored or tested. */
function putStock(page: FlowingPaper, records: HiveRecords, stock: Words['stock'], writing: Writing): void {
  const { headings, none, scale } = writing.words;
  putTable(page, headings.scores, scoresTable(records, stock, writing), none.scores);
  if (records.scores.length > 0) page.paragraph(scale);
  putTable(page, headings.tests, testsTable(records.tests, stock, writing), none.tests);
  if (records.tests.length === 0) return;
  if (records.strictlyHygienic !== null) page.paragraph(writing.words.strict(records.strictlyHygienic));
  const missing = missingTests(records.tests, stock, writing);
  if (missing !== null) page.paragraph(missing);
}

/** A heading, and below it the table, or the sentence that there is nothing. */
export function putTable(page: FlowingPaper, heading: string, table: FlowTable, none: string): void {
  page.heading(heading, 'H2');
  if (table.rows.length === 0) page.paragraph(none);
  else page.table(table);
}
