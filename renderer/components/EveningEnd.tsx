import { Button } from '@mui/material';
import { type ReactNode, useEffect, useRef } from 'react';
import type { Job, TodayView } from '../../shared/contract/today.ts';
import { shortCodes } from '../../shared/kernel/box-codes.ts';
import { eveningChanges } from './evening-changes.ts';
import { useDays, useWords } from './words.ts';

interface EveningEndProps {
  /** What was saved, in a sentence. */
  readonly summary: string;
  readonly changes: {
    readonly before: TodayView | null;
    readonly after: TodayView | null;
    /** How many changes were taken back at once; null before that. */
    readonly takenBack: number | null;
    readonly undoAll: (() => void) | null;
  };
  /** What is proposed for the boxes or hives just typed. */
  readonly proposed?: readonly ReactNode[];
}

/** After the typing: what was saved, what appeared, what vanished, and what could be done now. */
export function EveningEnd({ summary, changes, proposed = [] }: EveningEndProps) {
  const { before, after, takenBack, undoAll } = changes;
  const { evening: words } = useWords();
  const end = useRef<HTMLElement>(null);
  const ready = before !== null && after !== null;
  useEffect(() => {
    if (ready) end.current?.scrollIntoView({ block: 'nearest' });
  }, [ready]);
  return (
    <section ref={end} className="evening-end" role="status" aria-label={words.title}>
      {takenBack === null ? (
        <>
          <p className="line-good">{summary}</p>
          <div className="acts">
            <a href="#/today">{words.backToToday}</a>
            {undoAll ? <Button onClick={undoAll}>{words.undoAll}</Button> : null}
          </div>
        </>
      ) : (
        <p>{words.takenBack(takenBack)}</p>
      )}
      {ready && takenBack === null ? <Changes before={before} after={after} proposed={proposed} /> : null}
    </section>
  );
}

function Changes({ before, after, proposed }: { before: TodayView; after: TodayView; proposed: readonly ReactNode[] }) {
  const { evening: words, stepTitles } = useWords();
  const days = useDays();
  const { appeared, vanished, fewer, shut, freed } = eveningChanges(before, after);
  const job = (one: Job) =>
    words.job(
      stepTitles[one.step],
      one.batch,
      one.where.kind === 'hive' ? one.where.code : one.where.kind === 'boxes' ? shortCodes(one.where.codes) : '',
      words.expected(days.short(one.expected)),
    );
  const parts: readonly (readonly [string, readonly ReactNode[]])[] = [
    [words.appeared, appeared.map(job)],
    [words.vanished, vanished.map(job)],
    [words.fewer, fewer.map(job)],
    [words.shut, shut.map((one) => words.leave(one.what, days.short(one.until)))],
    [words.freed, freed.map((one) => one.what)],
    [words.proposed, proposed],
  ];
  const told = parts.filter(([, lines]) => lines.length > 0);
  if (told.length === 0) return <p className="soft">{words.nothing}</p>;
  return (
    <dl className="facts">
      {told.map(([name, lines]) => (
        <div key={name} style={{ display: 'contents' }}>
          <dt>{name}</dt>
          <dd>
            {lines.map((line, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: the list is made once and never changes its order
              <div key={index}>{line}</div>
            ))}
          </dd>
        </div>
      ))}
    </dl>
  );
}
