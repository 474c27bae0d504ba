import { Button } from '@mui/material';
import { useState } from 'react';
import type { MotherRef, QueenDetail } from '../../../shared/contract/queens.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { useRecordHistory } from '../../client/record-history.ts';
import { HistoryFold } from '../../components/HistoryFold.tsx';
import { Page } from '../../components/Page.tsx';
import { Section } from '../../components/Section.tsx';
import { useDays, useWords } from '../../components/words.ts';
import { YearColourMark } from '../../components/YearColourMark.tsx';
import { Feedback } from './Feedback.tsx';
import { HandOverCard } from './HandOverCard.tsx';
import { MoveForm } from './MoveForm.tsx';
import { Promises } from './Promises.tsx';
import { QueenChecks } from './QueenChecks.tsx';
import { QueenForm } from './QueenForm.tsx';
import { MotherLink } from './QueenTable.tsx';

/** One queen: what she is, where she goes, what is to be checked, and her mothers and daughters. */
export function QueenPage({ queenId }: { queenId: string }) {
  const { queens: words } = useWords();
  const answer = useAnswer(['queen', queenId], () => ask.queens.getQueen.query({ queenId }));
  if (answer.data === null)
    return (
      <Page lead={<a href="#/queens">{words.title}</a>} title={words.title}>
        {words.missing}
      </Page>
    );
  if (!answer.data) return <Page title="…">{null}</Page>;
  const queen = answer.data;
  return (
    <Page lead={<a href="#/queens">{words.title}</a>} title={words.one.title(queen.queen.number)}>
      <div className="columns">
        <Standing line={queen} />
        <MoveForm line={queen} />
        <Promises line={queen} />
        <Story line={queen} />
        <QueenChecks line={queen} />
        <Family line={queen} />
        <Feedback line={queen} />
      </div>
      <HandOverCard queenId={queenId} />
      <Particulars line={queen} />
      <QueenHistory queenId={queenId} />
    </Page>
  );
}

function QueenHistory({ queenId }: { queenId: string }) {
  return <HistoryFold {...useRecordHistory('queen', queenId)} />;
}

function Standing({ line }: { line: QueenDetail }) {
  const { queens: words } = useWords();
  const days = useDays();
  const { queen } = line;
  const day = (on: string | null) => on && days.dated(on);
  const facts: readonly (readonly [string, React.ReactNode])[] = [
    [words.columns.colour, <YearColourMark key="colour" colour={line.yearColour} />],
    [words.place, [words.places[queen.place], line.box ?? line.hive ?? queen.goneTo].filter(Boolean).join(': ')],
    [words.one.mother, line.mother ? <MotherLink key="mother" mother={line.mother} /> : null],
    [words.line, queen.motherLine],
    [
      words.columns.batch,
      line.batch ? (
        <a key="batch" href={`#/batches/${queen.batchId}`}>
          {line.batch}
        </a>
      ) : null,
    ],
    line.bornOn ? [words.one.born, day(line.bornOn)] : [words.one.bornIn, queen.bornIn],
    [words.marked, day(queen.markedOn)],
    [words.firstEggs, day(queen.firstEggsOn)],
    [words.proved, day(queen.provedOn) ?? words.notProved],
    [words.note, queen.note],
  ];
  return (
    <Section title={words.one.known}>
      <dl className="facts">
        {facts.map(([name, text]) =>
          text ? (
            <div key={name} style={{ display: 'contents' }}>
              <dt>{name}</dt>
              <dd>{text}</dd>
            </div>
          ) : null,
        )}
      </dl>
    </Section>
  );
}

/** Every move, newest first. */
function Story({ line }: { line: QueenDetail }) {
  const { queens: words } = useWords();
  const days = useDays();
  return (
    <Section title={words.one.story}>
      {line.moves.length === 0 ? <p className="soft">{words.one.noStory}</p> : null}
      <dl className="facts">
        {line.moves.map((move) => (
          <div key={move.id} style={{ display: 'contents' }}>
            <dt className="nowrap">{days.dated(move.movedOn)}</dt>
            <dd>
              {[
                [words.places[move.place], move.hive ?? move.goneTo].filter(Boolean).join(': '),
                move.way && words.move.ways[move.way],
                move.price,
                move.note,
              ]
                .filter(Boolean)
                .join(' · ')}
            </dd>
          </div>
        ))}
      </dl>
    </Section>
  );
}

function Family({ line }: { line: QueenDetail }) {
  const { queens: words } = useWords();
  return (
    <Section title={words.tree}>
      <dl className="facts">
        <dt>{words.one.mothers}</dt>
        <dd>
          <Refs refs={line.mothers} />
        </dd>
        <dt>{words.one.daughters}</dt>
        <dd>
          <Refs refs={line.daughters} />
        </dd>
        <dt>{words.one.batches}</dt>
        <dd>
          {line.batches.length === 0 ? <span className="soft">{words.one.none}</span> : null}
          {line.batches.map((batch) => (
            <span key={batch.id}>
              <a href={`#/batches/${batch.id}`}>{batch.code}</a>{' '}
            </span>
          ))}
        </dd>
      </dl>
    </Section>
  );
}

function Refs({ refs }: { refs: readonly MotherRef[] }) {
  const { queens: words } = useWords();
  if (refs.length === 0) return <span className="soft">{words.one.none}</span>;
  return refs.map((ref) => (
    <span key={ref.id}>
      <MotherLink mother={ref} />{' '}
    </span>
  ));
}

function Particulars({ line }: { line: QueenDetail }) {
  const { queens: words } = useWords();
  const [open, setOpen] = useState(false);
  const list = useAnswer(['queens'], () => ask.queens.listQueens.query(), open);
  if (!open)
    return (
      <Button variant="outlined" onClick={() => setOpen(true)}>
        {words.edit}
      </Button>
    );
  return list.data ? <QueenForm queen={line.queen} lines={list.data} onClose={() => setOpen(false)} /> : null;
}
