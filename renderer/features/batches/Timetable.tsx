import { Button } from '@mui/material';
import { Fragment, type ReactNode, useState } from 'react';
import type { BatchDetail } from '../../../shared/contract/batches.ts';
import type { TimetableLine } from '../../../shared/contract/timetable.ts';
import { ask } from '../../client/client.ts';
import { newId, useChange } from '../../client/hooks.ts';
import { useSlip } from '../../client/use-slip.ts';
import { AskedSlipDialog } from '../../components/AskedSlipDialog.tsx';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { HandsOffSign } from '../../components/HandsOffSign.tsx';
import { Section } from '../../components/Section.tsx';
import { useDays, useSentences, useWords } from '../../components/words.ts';
import { StepDays } from './StepDays.tsx';

interface TimetableProps {
  readonly batch: BatchDetail;
  /** The step whose day the person came to change. */
  readonly open: string | null;
}

/** Every step with its day, its window and how it stands; what, why, caution and source open below it. */
export function Timetable({ batch, open }: TimetableProps) {
  const { batches: words } = useWords();
  const slip = useSlip();
  const drop = useChange(ask.batches.dropStep.mutate);
  const takeUp = useChange(ask.batches.takeUpStep.mutate);
  const problem = useProblemOf(slip.state.refusal);
  const [told, setTold] = useState(open);
  const { columns } = words.one;
  const days = useDays();
  return (
    <Section title={words.one.timetable}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that may scroll must be reachable by keyboard */}
      <div role="group" className="table-scroll" tabIndex={0} aria-label={words.one.timetable}>
        <table className="plain timetable">
          <thead>
            <tr>
              <th scope="col">{columns.day}</th>
              <th scope="col">{columns.step}</th>
              <th scope="col">{columns.window}</th>
              <th scope="col">
                <span className="visually-hidden">{words.one.markDone}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {batch.timetable.lines.map((line) => (
              <Fragment key={line.step}>
                <LineRow
                  line={line}
                  batch={batch}
                  told={told === line.step}
                  onTell={() => setTold(told === line.step ? null : line.step)}
                  onMark={() =>
                    void slip.propose({
                      kind: 'mark',
                      change: { id: newId(), batchId: batch.id, step: line.step, doneOn: days.today, note: null },
                    })
                  }
                  onTakeUp={() => void takeUp.run({ batchId: batch.id, step: line.step })}
                  onUnmark={() => void slip.propose({ kind: 'unmark', change: { batchId: batch.id, step: line.step } })}
                />
                {told === line.step ? (
                  <Telling line={line} batch={batch}>
                    {line.kind === 'job' && line.state !== 'done' && line.state !== 'dropped' ? (
                      <StepDays
                        batch={batch}
                        line={line}
                        focus={line.step === open}
                        onSlip={(change) => void slip.propose(change)}
                        dropping={drop.state.busy}
                        onDrop={(reason) =>
                          void drop.run({
                            id: newId(),
                            batchId: batch.id,
                            step: line.step,
                            droppedOn: days.today,
                            reason,
                          })
                        }
                        problem={problem}
                      />
                    ) : null}
                  </Telling>
                ) : null}
              </Fragment>
            ))}
          </tbody>
        </table>
      </div>
      <ChangeLines {...slip.state} ownFields={told === null ? [] : OWN_FIELDS} />
      <ChangeLines {...drop.state} />
      <ChangeLines {...takeUp.state} />
      <AskedSlipDialog batch={batch.code} slip={slip} />
    </Section>
  );
}

/** Shown beside the fields of the step that is opened. */
const OWN_FIELDS = ['doneOn', 'done', 'movedTo', 'moved'];

interface LineRowProps {
  readonly line: TimetableLine;
  readonly batch: BatchDetail;
  readonly told: boolean;
  readonly onTell: () => void;
  readonly onMark: () => void;
  readonly onTakeUp: () => void;
  readonly onUnmark: () => void;
}

function LineRow({ line, batch, told, onTell, onMark, onTakeUp, onUnmark }: LineRowProps) {
  const say = useSentences();
  const { batches: words } = useWords();
  const days = useDays();
  const title = line.own.title ?? say.step(line.step, batch.method, batch.builderType);
  const handsOff = line.kind === 'hands-off';
  const markable = line.kind === 'job' && ['due', 'late', 'can-be-done'].includes(line.state);
  return (
    <tr
      className={[line.state === 'passed' || line.state === 'dropped' ? 'quiet' : '', handsOff ? 'hatch' : ''].join(
        ' ',
      )}
    >
      <td className="nowrap">{days.short(line.doneOn ?? line.expected)}</td>
      <th scope="row">
        <button type="button" className="as-text" aria-expanded={told} onClick={onTell}>
          {handsOff ? (
            <span className="hands-off">
              <HandsOffSign /> {title}
            </span>
          ) : (
            title
          )}
        </button>
        {line.droppedOn ? (
          <div className="soft small">{words.one.dropped(days.short(line.droppedOn), line.dropReason)}</div>
        ) : null}
        {line.movedByPerson ? <div className="soft small">{words.one.putHere(line.moveReason)}</div> : null}
      </th>
      <td className="soft nowrap">
        {line.doneOn ? (
          <span className="good">✓ {words.one.state.done}</span>
        ) : (
          words.one.window(days.short(line.earliest), days.short(line.latest))
        )}
      </td>
      <td className="nowrap">
        {line.state === 'done' ? (
          <Button size="small" onClick={onUnmark} aria-label={`${words.one.takeBack}: ${title}`}>
            {words.one.takeBack}
          </Button>
        ) : line.state === 'dropped' ? (
          <Button size="small" onClick={onTakeUp} aria-label={`${words.one.takeUp}: ${title}`}>
            {words.one.takeUp}
          </Button>
        ) : markable ? (
          <>
            {line.state === 'late' ? <span className="bad">{words.one.state.late} </span> : null}
            <Button size="small" variant="outlined" onClick={onMark} aria-label={`${words.one.markDone}: ${title}`}>
              {words.one.markDone}
            </Button>
          </>
        ) : (
          <span className="soft">{words.one.state[line.state]}</span>
        )}
      </td>
    </tr>
  );
}

function Telling({ line, batch, children }: { line: TimetableLine; batch: BatchDetail; children: ReactNode }) {
  const say = useSentences();
  const { batches: words, sources } = useWords();
  const { what, why, caution } = say.stepWords(line.step, batch.method, batch.builderType);
  const rows = [
    [words.one.what, what],
    [words.one.why, why],
    [words.one.caution, caution],
    [words.one.ownNote, line.own.note],
    [words.one.source, sources.told(line.source)],
  ].filter(([, text]) => text);
  return (
    <tr>
      <td colSpan={4}>
        <dl className="facts">
          {rows.map(([name, text]) => (
            <Fragment key={name}>
              <dt>{name}</dt>
              <dd>{text}</dd>
            </Fragment>
          ))}
        </dl>
        {children}
      </td>
    </tr>
  );
}
