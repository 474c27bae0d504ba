import { useEffect, useRef, useState } from 'react';
import type { Job } from '../../../shared/contract/today.ts';
import { shortCodes } from '../../../shared/kernel/box-codes.ts';
import { ask } from '../../client/client.ts';
import { newId } from '../../client/hooks.ts';
import { type RowDrafts, useRowDrafts } from '../../client/row-drafts.ts';
import { useTodayChanges } from '../../client/today-changes.ts';
import { type RowSaid, useRowSaving } from '../../client/use-row-saving.ts';
import { EveningEnd } from '../../components/EveningEnd.tsx';
import { RowSheet } from '../../components/RowSheet.tsx';
import { SavedSign } from '../../components/SavedSign.tsx';
import { useRowGrid } from '../../components/use-row-grid.ts';
import { useDays, useToday, useWords } from '../../components/words.ts';
import { doneOn, jobId, STEP_KEYS, type StepResult, stepResultOf, stillNoted } from './step-typing.ts';

interface TypedStep {
  readonly id: string;
  readonly result: StepResult;
  readonly note: string;
}

/** The jobs as they were when the page was opened: one that is done stays, so that it can be corrected. */
export function StepGrid({ now }: { now: readonly Job[] }) {
  const { steps: words } = useWords().today;
  const [jobs] = useState(now);
  const { typed, type, said, notes, changes, finished, grid } = useStepGrid(jobs, now.map(jobId));
  const done = [...typed.values()].filter(({ result }) => result !== 'not-done').length;
  if (jobs.length === 0) return <p>{words.empty}</p>;
  return (
    <>
      <p className="soft" aria-live="polite">
        {words.progress(typed.size, jobs.length)}
      </p>
      <RowSheet
        title={words.title}
        columns={words.columns}
        rows={jobs}
        idOf={jobId}
        said={said}
        found={(job) => notes.found(jobId(job))}
        grid={grid}
        cells={(job, current) => (
          <Cells
            job={job}
            typed={typed.get(jobId(job))}
            said={said.get(jobId(job))}
            notes={notes}
            current={current}
            onNote={(note) => type(job, { note })}
          />
        )}
      />
      {finished ? <EveningEnd summary={words.summary(done)} changes={changes} /> : null}
      <Keys />
    </>
  );
}

/** `open` are the jobs that are still to do, asked for anew after every change. */
function useStepGrid(jobs: readonly Job[], open: readonly string[]) {
  const today = useToday();
  const [typed, setTyped] = useState<ReadonlyMap<string, TypedStep>>(new Map());
  const [finished, setFinished] = useState(false);
  const saving = useRowSaving();
  const notes = useRowDrafts(
    'step-note',
    jobs.map((job) => ({ id: jobId(job), now: '' })),
    (a, b) => a.trim() === b.trim(),
  );
  const [start] = useState(() =>
    Math.max(
      0,
      jobs.findIndex((job) => notes.found(jobId(job))),
    ),
  );
  const seen = useRef(open.join());
  useEffect(() => {
    if (seen.current === open.join()) return;
    seen.current = open.join();
    setTyped((all) => stillNoted(all, open, (job) => saving.said.get(job)?.state === 'saved'));
  });
  const changes = useTodayChanges();
  const type = (job: Job, change: Partial<TypedStep>) => {
    const before = typed.get(jobId(job)) ?? { id: newId(), result: 'today', note: '' };
    const next = { ...before, ...change };
    setTyped((all) => new Map(all).set(jobId(job), next));
    setFinished(false);
    const on = doneOn(next.result, today, job.expected);
    const { batchId, step } = job;
    saving.save(jobId(job), async () => {
      if (on === null) return ask.batches.unmarkStep.mutate({ batchId, step });
      const note = next.note.trim() || null;
      const result = await ask.batches.markStep.mutate({ id: next.id, batchId, step, doneOn: on, note });
      if (result.ok) notes.saved(jobId(job), next.note);
      return result;
    });
  };
  const grid = useRowGrid({
    rows: jobs.length,
    start,
    startInNote: notes.found(jobIdAt(jobs, start)),
    // A note lives in its field until it is left.
    wholeUpTo: Number.POSITIVE_INFINITY,
    onKey: (row, key) => {
      const job = jobs[row];
      const result = stepResultOf(key);
      if (!job || !result || document.activeElement instanceof HTMLInputElement) return false;
      type(job, { result });
      grid.go(row + 1);
      return true;
    },
    onFinish: () =>
      void saving.settled().then(() => {
        setFinished(true);
        void changes.compare();
      }),
  });
  return { typed, type, said: saving.said, notes, changes, finished, grid };
}

const jobIdAt = (jobs: readonly Job[], row: number): string => {
  const job = jobs[row];
  return job ? jobId(job) : '';
};

interface CellsProps {
  readonly job: Job;
  readonly typed: TypedStep | undefined;
  readonly said: RowSaid | undefined;
  readonly notes: RowDrafts<string>;
  readonly current: boolean;
  readonly onNote: (note: string) => void;
}

function Cells({ job, typed, said, notes, current, onNote }: CellsProps) {
  const { today: words, stepTitles } = useWords();
  const days = useDays();
  const title = job.ownTitle ?? stepTitles[job.step];
  const where =
    job.where.kind === 'hive' ? job.where.code : job.where.kind === 'boxes' ? shortCodes(job.where.codes) : '';
  const result = typed ? words.steps.results[typed.result] : null;
  return (
    <>
      <th scope="row">{title}</th>
      <td className="nowrap">{job.batch}</td>
      <td>{where}</td>
      <td className="nowrap">{days.short(job.expected)}</td>
      <td>
        <span
          className="now"
          data-now
          role="button"
          tabIndex={current ? 0 : -1}
          aria-label={
            result
              ? `${title}, ${job.batch}, ${result}`
              : words.steps.read(title, job.batch, where, days.short(job.expected))
          }
        >
          {result ?? '\u00a0'}
        </span>
        <SavedSign state={said?.state ?? null} />
      </td>
      <td>
        <NoteInput
          label={`${title}, ${job.batch}, ${words.steps.columns.note}`}
          half={notes.of(jobId(job)) ?? ''}
          onType={(note) => notes.keep(jobId(job), note.trim() === '' ? null : note)}
          onNote={onNote}
        />
      </td>
    </>
  );
}

interface NoteInputProps {
  readonly label: string;
  /** What was typed before and not saved. */
  readonly half: string;
  readonly onType: (note: string) => void;
  readonly onNote: (note: string) => void;
}

/** Saved when it is left; a note alone says that the job was done today. */
function NoteInput({ label, half, onType, onNote }: NoteInputProps) {
  const [note, setNote] = useState(half);
  const [kept, setKept] = useState('');
  return (
    <input
      className="control"
      style={{ width: '14rem', minHeight: 34 }}
      aria-label={label}
      data-note
      autoComplete="off"
      value={note}
      onChange={(event) => {
        setNote(event.target.value);
        onType(event.target.value);
      }}
      onBlur={() => {
        if (note.trim() === kept.trim()) return;
        setKept(note);
        onNote(note);
      }}
    />
  );
}

function Keys() {
  const { steps: words } = useWords().today;
  return (
    <section className="legend" aria-label={words.legend}>
      {STEP_KEYS.map(({ result, key, digit }) => (
        <span key={result} className="nowrap">
          <kbd>{key}</kbd> <kbd>{digit}</kbd> {words.results[result]}
        </span>
      ))}
      <span className="soft">{words.keys}</span>
    </section>
  );
}
