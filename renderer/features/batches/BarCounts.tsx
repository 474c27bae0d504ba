import { Button, InputBase } from '@mui/material';
import { useIsMutating } from '@tanstack/react-query';
import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { LOW_TAKE_REMEDIES, LOW_TAKE_SHARE } from '../../../shared/biology/remedies.ts';
import type { BarRow, BatchDetail } from '../../../shared/contract/batches.ts';
import { COUNTED_STAGES, type CountedStage } from '../../../shared/model/batch.ts';
import { perCent } from '../../../shared/text/share-text.ts';
import { ask } from '../../client/client.ts';
import { useDraft } from '../../client/drafts.ts';
import { newId, useChange } from '../../client/hooks.ts';
import { useTodayChanges } from '../../client/today-changes.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { DayField } from '../../components/DayField.tsx';
import { EveningEnd } from '../../components/EveningEnd.tsx';
import { Remedies } from '../../components/Remedies.tsx';
import { type RowState, SavedSign } from '../../components/SavedSign.tsx';
import { Section } from '../../components/Section.tsx';
import { useToday, useWords } from '../../components/words.ts';
import { cellsRemoved, readCounts, type TypedCounts, typedCounts } from './typed-counts.ts';

/** Bars as rows, one number each; a row is saved when it is left, and Ctrl+Enter tells what the counts changed. */
export function BarCounts({ batch, focus }: { batch: BatchDetail; focus: string | null }) {
  const { batches: words } = useWords();
  const today = useToday();
  const [day, setDay] = useState<string | null>(today);
  const addBar = useChange(ask.batches.addBar.mutate);
  const table = useRef<HTMLTableElement>(null);
  const end = useCountsEnd();
  useEffect(() => {
    if (focus === null) return;
    const inputs = [...(table.current?.querySelectorAll('input') ?? [])];
    const column = inputs.filter((input) => input.dataset.stage === focus);
    const wanted = column.length > 0 ? column : inputs.filter((input) => input.dataset.stage !== 'removed');
    (wanted.find((input) => input.value === '') ?? wanted[0])?.focus();
  }, [focus]);
  return (
    <Section
      title={words.one.counts}
      acts={
        <Button size="small" onClick={() => void addBar.run({ batchId: batch.id, barId: newId() })}>
          {words.one.addBar}
        </Button>
      }
    >
      <div className="stack">
        <div style={{ maxWidth: 260 }}>
          <DayField label={words.one.countsDay} value={day} onChange={setDay} />
        </div>
        <div className="table-scroll">
          <table className="plain grid bar-counts" ref={table} onKeyDown={(event) => walkCounts(event, end.finish)}>
            <thead>
              <tr>
                <td />
                {COUNTED_STAGES.map((stage) => (
                  <th key={stage} scope="col" className="number">
                    {words.one[stage]}
                  </th>
                ))}
                <td />
              </tr>
            </thead>
            <tbody>
              {batch.bars.map((bar) => (
                <BarLine key={bar.barId} batch={batch} bar={bar} day={day ?? today} />
              ))}
              <Totals batch={batch} />
            </tbody>
          </table>
        </div>
        {end.finished ? <EveningEnd summary={words.one.countsSaved} changes={end.changes} /> : null}
        {isLowTake(batch) ? <Remedies remedies={LOW_TAKE_REMEDIES} source={LOW_TAKE_SHARE.source} /> : null}
        <GivenAsPlanned batch={batch} />
        <p className="soft small">{words.one.countsHint}</p>
        <ChangeLines {...addBar.state} />
      </div>
    </Section>
  );
}

/** Without the cells given there is no share; what was planned is offered, and only the person says that it was so. */
function GivenAsPlanned({ batch: { id, tally, batch, larvaeGivenOn, state } }: { batch: BatchDetail }) {
  const { batches: words } = useWords();
  const today = useToday();
  const give = useChange(ask.batches.giveAsPlanned.mutate);
  const { cellsPlanned } = batch;
  if (tally.given !== null || cellsPlanned === null || larvaeGivenOn > today || state === 'closed') return null;
  return (
    <div>
      <p className="line-notice">{words.one.givenUnknown}</p>
      <Button size="small" disabled={give.state.busy} onClick={() => void give.run({ batchId: id })}>
        {words.one.giveAsPlanned(cellsPlanned)}
      </Button>
      <ChangeLines {...give.state} />
    </div>
  );
}

const isLowTake = ({ tally: { given, taken } }: BatchDetail): boolean =>
  given !== null && given > 0 && taken !== null && taken / given < LOW_TAKE_SHARE.value;

/** The end of the counting is told when every row that was left is saved or refused. */
function useCountsEnd() {
  const [finished, setFinished] = useState(false);
  const changes = useTodayChanges();
  const { compare } = changes;
  const saving = useIsMutating();
  useEffect(() => {
    if (finished && saving === 0) void compare();
  }, [finished, saving, compare]);
  return { changes, finished, finish: () => setFinished(true) };
}

const STEPS: Readonly<Record<string, number>> = { Enter: 1, ArrowDown: 1, ArrowUp: -1 };

/** Enter and the arrows walk the column a person counts in; Ctrl+Enter is done. */
function walkCounts(event: KeyboardEvent<HTMLTableElement>, finish: () => void): void {
  const step = STEPS[event.key];
  if (step === undefined || !(event.target instanceof HTMLInputElement)) return;
  event.preventDefault();
  if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) {
    event.target.blur();
    finish();
    return;
  }
  const { stage } = event.target.dataset;
  const column = [...event.currentTarget.querySelectorAll<HTMLInputElement>(`input[data-stage="${stage}"]`)];
  const next = column[column.indexOf(event.target) + step];
  if (next) next.focus();
  else if (event.key === 'Enter') leaveLast(event.target);
}

/** The last row is saved as well, and keeps the keyboard, so that Ctrl+Enter and Up still work. */
function leaveLast(input: HTMLInputElement): void {
  input.blur();
  input.focus();
}

function BarLine({ batch, bar, day }: { batch: BatchDetail; bar: BarRow; day: string }) {
  const { batches: words, frame, number } = useWords();
  const { value: typed, set: setTyped, found } = useDraft<TypedCounts>(`bar-counts:${bar.barId}`, typedCounts(bar));
  const save = useChange(ask.batches.recordBarCounts.mutate);
  const { refusal } = save.state;
  const unreadable = COUNTED_STAGES.some(
    (stage) => typed[stage].trim() !== '' && !/^\d{1,3}$/.test(typed[stage].trim()),
  );
  const leave = () => {
    const counts = readCounts(typed);
    // As it is saved, so that "07" does not seem to wait afterwards.
    if (counts) setTyped(typedCounts({ ...bar, counts }));
    const same = COUNTED_STAGES.every((stage) => counts?.[stage] === bar.counts[stage]);
    if (counts && !same) void save.run({ batchId: batch.id, barId: bar.barId, countedOn: day, ...counts });
  };
  const set = (stage: CountedStage, text: string) => setTyped((before) => ({ ...before, [stage]: text }));
  return (
    <>
      <tr>
        <th scope="row">{words.one.bar(bar.number)}</th>
        {COUNTED_STAGES.map((stage) => (
          <td key={stage} className="number">
            <CountInput
              label={`${words.one.bar(bar.number)}, ${words.one[stage]}`}
              stage={stage}
              value={typed[stage]}
              refused={refusal !== null && 'field' in refusal && refusal.field === stage}
              onType={(text) => set(stage, text)}
              onLeave={leave}
            />
          </td>
        ))}
        <td>
          <SavedSign state={rowState(save.state)} />
        </td>
      </tr>
      <tr hidden={!found && !refusal && !unreadable && save.state.notices.length === 0 && !save.state.notReached}>
        <td colSpan={6}>
          {unreadable ? (
            <p className="line-problem" role="alert">
              {number}
            </p>
          ) : null}
          {found ? <p className="line-notice">{frame.rowDraft}</p> : null}
          <ChangeLines {...save.state} />
        </td>
      </tr>
    </>
  );
}

interface CountInputProps {
  readonly label: string;
  readonly stage: CountedStage;
  readonly value: string;
  readonly refused: boolean;
  readonly onType: (text: string) => void;
  readonly onLeave: () => void;
}

function CountInput({ label, stage, value, refused, onType, onLeave }: CountInputProps) {
  return (
    <InputBase
      className="control"
      value={value}
      onChange={(event) => onType(event.target.value)}
      onBlur={onLeave}
      slotProps={{
        input: {
          'aria-label': label,
          'aria-invalid': refused ? true : undefined,
          inputMode: 'numeric',
          'data-stage': stage,
          autoComplete: 'off',
        } as object,
      }}
    />
  );
}

function rowState(state: ReturnType<typeof useChange>['state']): RowState | null {
  if (state.busy) return 'saving';
  if (state.refusal || state.notReached) return 'not-saved';
  return state.done ? 'saved' : null;
}

function Totals({ batch }: { batch: BatchDetail }) {
  const { tally } = batch;
  const { batches: words } = useWords();
  const known = (value: number | null) => value ?? <span className="soft small">{words.one.notCounted}</span>;
  const share = tally.given && tally.taken !== null ? ` (${perCent(tally.taken / tally.given)})` : '';
  return (
    <tr>
      <th scope="row">{words.one.all}</th>
      <td className="number">{known(tally.given)}</td>
      <td className="number">
        {known(tally.taken)}
        {share}
      </td>
      <td className="number">{cellsRemoved(batch.bars)}</td>
      <td className="number">{known(tally.sealed)}</td>
    </tr>
  );
}
