import type { PlanAnswer, PlanChoiceInput } from '../../../shared/contract/forecast.ts';
import { perCent, perCentRange } from '../../../shared/text/share-text.ts';
import { DataTable } from '../../components/DataTable.tsx';
import { Section } from '../../components/Section.tsx';
import { useAmount, useWords } from '../../components/words.ts';

interface AnswerProps {
  readonly choice: PlanChoiceInput;
  readonly answer: PlanAnswer | null;
  readonly waiting: boolean;
}

const inTwenty = (chance: number): number => Math.round(20 * chance);

/** What it takes, in words first; the way there and the losses below. */
export function PlanAnswerView({ choice, answer, waiting }: AnswerProps) {
  const { forecast } = useWords();
  const words = forecast.answer;
  return (
    <div aria-live="polite" aria-busy={waiting}>
      <Section title={words.title}>
        {answer ? <Sentences choice={choice} answer={answer} /> : <p role="status">{words.reckoning}</p>}
      </Section>
      {answer ? (
        <>
          <OnTheWay answer={answer} />
          {answer.rows.length > 0 ? <Rows answer={answer} /> : null}
          <Losses answer={answer} />
        </>
      ) : null}
    </div>
  );
}

function Sentences({ choice, answer }: { choice: PlanChoiceInput; answer: PlanAnswer }) {
  const { forecast } = useWords();
  const words = forecast.answer;
  const { larvaeEach, boxes, laying } = answer;
  const untried = answer.stages.every((stage) => stage.batches === 0);
  return (
    <>
      {larvaeEach === null ? (
        <p>
          <strong>{words.notReached(choice.wanted, inTwenty(answer.chance))}</strong>{' '}
          {answer.heldBackBy.map((limit) => words.heldBackBy[limit]).join(' ') || words.askLess}
        </p>
      ) : (
        <p className="finding">
          <strong>
            {answer.batches === 1 ? words.one(larvaeEach) : words.many(larvaeEach, answer.batches)}
            {boxes === null ? '.' : `, ${words.boxes(boxes)}.`}
          </strong>{' '}
          {words.promise(choice.wanted, inTwenty(answer.chance))}
        </p>
      )}
      <p>
        {words.likely(laying)} {larvaeEach !== null && laying.mean > choice.wanted + 1 ? words.safety(laying.mean) : ''}
      </p>
      {untried ? <p className="line-notice">{words.guesswork}</p> : null}
      {answer.stagesGoTogether ? <p className="line-notice">{words.together}</p> : null}
    </>
  );
}

function OnTheWay({ answer }: { answer: PlanAnswer }) {
  const amount = useAmount();
  const { forecast } = useWords();
  const words = forecast.answer;
  return (
    <Section title={words.onTheWay} level={3}>
      <ol className="way">
        {answer.onTheWay.map((count, index) => (
          <li key={words.way[index]}>
            <strong>{amount(Math.round(count))}</strong> {words.way[index]}
          </li>
        ))}
      </ol>
    </Section>
  );
}

function Rows({ answer }: { answer: PlanAnswer }) {
  const { forecast } = useWords();
  const words = forecast.answer;
  return (
    <Section title={words.rows} level={3}>
      <DataTable
        caption={words.rows}
        rows={answer.rows}
        rowKey={(row) => String(row.larvaeEach)}
        columns={[
          { key: 'larvae', title: words.rowColumns.larvae, head: true, cell: (row) => row.larvaeEach },
          { key: 'boxes', title: words.rowColumns.boxes, numeric: true, cell: (row) => row.boxes ?? words.noBoxes },
          { key: 'chance', title: words.rowColumns.chance, cell: (row) => words.times(inTwenty(row.chance)) },
        ]}
      />
    </Section>
  );
}

function Losses({ answer }: { answer: PlanAnswer }) {
  const { forecast, season } = useWords();
  const words = forecast.answer;
  return (
    <Section title={words.losses} level={3}>
      <DataTable
        caption={words.losses}
        rows={answer.stages}
        rowKey={(stage) => stage.stage}
        columns={[
          { key: 'stage', title: words.lossColumns.stage, head: true, cell: ({ stage }) => season.stages[stage].name },
          {
            key: 'rate',
            title: words.lossColumns.rate,
            cell: ({ mean, lower, upper, batches }) => (
              <>
                <strong>{perCent(mean)}</strong>
                <br />
                <span className="soft small">
                  {lower === upper ? '' : `${perCentRange(lower, upper)}, `}
                  {batches === 1 ? season.oneBatch : season.batchesN(batches)}
                </span>
              </>
            ),
          },
          {
            key: 'lost',
            title: words.lossColumns.lost,
            cell: ({ lost }) => <span className="nowrap">{words.lost(lost.mean, lost.lower, lost.upper)}</span>,
          },
          {
            key: 'largest',
            title: words.lossColumns.largest,
            cell: ({ largest }) => <span className="nowrap">{words.times(inTwenty(largest))}</span>,
          },
          { key: 'worth', title: words.lossColumns.worth, cell: ({ worth }) => words.worth(worth) },
        ]}
      />
      <p className="soft small">{words.lossNote(answer.layingPer100)}</p>
    </Section>
  );
}
