import { Button } from '@mui/material';
import { useState } from 'react';
import type { JournalStep } from '../../../shared/model/journal.ts';
import { ask } from '../../client/client.ts';
import { useAnswer, useChange } from '../../client/hooks.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { DataTable } from '../../components/DataTable.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { Page } from '../../components/Page.tsx';
import { useDays, useSentences, useWords } from '../../components/words.ts';

const LINES = 50;

/** Every change of the workbook, the latest first, with the last one to take back. */
export function History() {
  const { history: words } = useWords();
  const days = useDays();
  const say = useSentences();
  // The last line of each page turned so far; the page shown begins below the last of them.
  const [turned, setTurned] = useState<readonly number[]>([]);
  const before = turned.at(-1) ?? null;
  const list = useAnswer(['history', 'steps', before], () => ask.history.listSteps.query({ before, limit: LINES }));
  const undo = useChange(() => ask.history.undo.mutate());
  const redo = useChange(() => ask.history.redo.mutate());
  const from = useChange(ask.history.undoFrom.mutate);
  if (!list.data) return <Page title={words.title}>{null}</Page>;
  const { steps, more, undoableFrom, undo: toUndo, redo: toRedo } = list.data;
  const last = steps.at(-1);
  return (
    <Page
      title={words.title}
      acts={
        <>
          {toUndo ? (
            <Button variant="outlined" disabled={undo.state.busy} onClick={() => void undo.run(undefined)}>
              {words.undoThat(say.change(toUndo.words))}
            </Button>
          ) : null}
          {toRedo ? (
            <Button variant="outlined" disabled={redo.state.busy} onClick={() => void redo.run(undefined)}>
              {words.redoThat(say.change(toRedo.words))}
            </Button>
          ) : null}
        </>
      }
    >
      <p className="soft" style={{ marginBottom: 18 }}>
        {words.line}
      </p>
      <ChangeLines {...undo.state} />
      <ChangeLines {...redo.state} />
      <ChangeLines {...from.state} />
      {steps.length === 0 ? (
        <EmptyState title={words.empty} />
      ) : (
        <DataTable
          caption={words.title}
          rows={steps}
          rowKey={(step) => String(step.id)}
          quiet={(step) => step.undone}
          columns={[
            {
              key: 'when',
              title: words.columns.when,
              cell: ({ at }) => <span className="nowrap">{days.instant(at)}</span>,
            },
            { key: 'what', title: words.columns.what, head: true, cell: (step) => <SaidStep step={step} /> },
            {
              key: 'state',
              title: words.columns.state,
              cell: (step) => (
                <StepState
                  step={step}
                  undoableFrom={undoableFrom}
                  onUndoFrom={() => void from.run({ step: step.id })}
                />
              ),
            },
          ]}
        />
      )}
      <div className="acts" style={{ marginTop: 14 }}>
        {more && last ? <Button onClick={() => setTurned([...turned, last.id])}>{words.older}</Button> : null}
        {turned.length > 0 ? <Button onClick={() => setTurned(turned.slice(0, -1))}>{words.newer}</Button> : null}
      </div>
    </Page>
  );
}

/** What was done and, where somebody was named, by whom it was typed. */
function SaidStep({ step }: { step: JournalStep }) {
  const { settings } = useWords();
  const say = useSentences();
  return (
    <>
      {say.historyStep(step)}
      {step.typedBy === null ? null : <span className="soft small">, {settings.typedBy(step.typedBy)}</span>}
    </>
  );
}

interface StepStateProps {
  readonly step: JournalStep;
  readonly undoableFrom: number;
  readonly onUndoFrom: () => void;
}

/** A change that stands can be taken back with all that came after it. */
function StepState({ step, undoableFrom, onUndoFrom }: StepStateProps) {
  const { history: words } = useWords();
  const say = useSentences();
  if (step.undone) return <>{words.takenBack}</>;
  if (step.kind !== 'change' || step.id < undoableFrom) return null;
  return (
    <Button size="small" aria-label={words.undoFromRead(say.change(step.words))} onClick={onUndoFrom}>
      {words.undoFrom}
    </Button>
  );
}
