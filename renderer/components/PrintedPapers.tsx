import type { PrintedPaper } from '../../shared/contract/papers.ts';
import type { NotedPaper } from '../../shared/model/noted-paper.ts';
import { ask } from '../client/client.ts';
import { useAnswer } from '../client/hooks.ts';
import { useDays, useWords } from './words.ts';

const usePrinted = () => useAnswer(['printed-papers'], () => ask.print.listPrintedPapers.query()).data ?? [];

/** When this paper was printed last, and whether it still holds; nothing before its first print. */
export function PrintedBefore({ of }: { of: NotedPaper }) {
  const { printedPapers: words } = useWords();
  const days = useDays();
  const before = usePrinted().find((one) => JSON.stringify(one.of) === JSON.stringify(of));
  if (!before) return null;
  const day = days.short(before.printedOn);
  return before.changed ? (
    <p className="line-notice" role="status">
      {words.changed(day)}
    </p>
  ) : (
    <p className="soft">{words.printed(day)}</p>
  );
}

/** Every printed paper that no longer says what the workbook says, each leading to where it is made. */
export function PapersOutOfDate() {
  const { printedPapers: words } = useWords();
  const days = useDays();
  const stale = usePrinted().filter(({ changed }) => changed);
  if (stale.length === 0) return null;
  return (
    <div className="line-notice" role="status">
      {stale.map((one) => (
        <p key={JSON.stringify(one.of)}>
          <a href={placeOf(one)}>
            {words.outOfDate(words.names[one.paper](one.name, one.year), days.short(one.printedOn))}
          </a>
        </p>
      ))}
    </div>
  );
}

function placeOf({ of }: PrintedPaper): string {
  switch (of.paper) {
    case 'queen-card':
      return `#/queens/${of.queenId}`;
    case 'hive-page':
      return `#/hives/${of.colonyId}`;
    case 'inspector-pages':
      return '#/print';
    case 'season-report':
      return '#/season?tab=report';
  }
}
