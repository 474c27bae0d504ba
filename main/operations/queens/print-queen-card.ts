import type { z } from 'zod';
import type { PrintQueenCard } from '../../../shared/contract/papers.ts';
import type { PaperFile } from '../../../shared/contract/print.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { fullDay } from '../../../shared/text/day-text.ts';
import { flowingPaper } from '../../paper/flowing-paper.ts';
import type { Desk } from '../operation.ts';
import { paperFile, paperFoot } from '../paper-file.ts';
import { storedSettings } from '../stored-settings.ts';
import { workbookWords } from '../workbook-words.ts';
import { getQueen } from './get-queen.ts';

/** The card that goes with a queen: what is known of her, and how a queen is usually introduced. */
export async function printQueenCard(
  desk: Desk,
  { queenId, paper, large }: z.infer<typeof PrintQueenCard>,
): Promise<Result<PaperFile, Refusal>> {
  const line = getQueen(desk, { queenId });
  if (!line) return refuse({ kind: 'queen-missing' });
  const { queen, mother } = line;
  const { handOver: words, queens: queenWords, cautions, language } = workbookWords(desk);
  const order = storedSettings(desk.workbook.tables.settings).dateOrder;
  const day = (on: string | null) => (on === null ? words.none : fullDay(on, order, language));
  const card = flowingPaper({ ...paperFoot(desk), title: words.title(queen.number), paper, large });
  const promised = line.promises.find(({ standing }) => standing !== 'not-kept');
  const promisedRow = promised
    ? [[words.promised, words.promisedTo(promised.promisedTo, promised.byWhen && day(promised.byWhen))]]
    : [];
  card.heading(words.title(queen.number), 'H1');
  card.table({
    columns: [{ title: words.fact }, { title: words.word }],
    rows: [
      [queenWords.columns.colour, words.yearColour(queenWords.colours[line.yearColour], queen.bornIn)],
      [words.mark, words.marked(queen.markedOn === null ? null : fullDay(queen.markedOn, order, language))],
      [queenWords.one.mother, mother?.name ?? words.none],
      [queenWords.line, queen.motherLine ?? mother?.line ?? words.none],
      [queenWords.columns.eggs, day(queen.firstEggsOn)],
      [queenWords.columns.proved, queen.provedOn === null ? queenWords.notProved : day(queen.provedOn)],
      ...promisedRow,
      [words.raised, desk.workbook.name],
    ],
  });
  card.heading(words.introduce, 'H2');
  card.list(words.steps);
  card.heading(words.cautions, 'H2');
  card.list([...cautions.list.slice(0, 1), queenWords.move.caution, words.caution]);
  return ok(paperFile(words.file(queen.number), await card.finish()));
}
