import { Button } from '@mui/material';
import { useState } from 'react';
import type { Job } from '../../../shared/contract/today.ts';
import type { IsoDay } from '../../../shared/kernel/day.ts';
import type { Step } from '../../../shared/model/step.ts';
import { ask } from '../../client/client.ts';
import { newId, useChange } from '../../client/hooks.ts';
import { useSlip } from '../../client/use-slip.ts';
import { AskedSlipDialog } from '../../components/AskedSlipDialog.tsx';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { DropForm } from '../../components/DropForm.tsx';
import { goTo } from '../../components/routes.ts';
import { useDays, useFirstWords } from '../../components/words.ts';
import { BoxCodes } from './BoxCodes.tsx';
import { useJobKeys } from './use-job-keys.ts';

export type JobKind = 'due' | 'late' | 'early' | 'tomorrow';

interface JobRowProps {
  readonly job: Job;
  readonly kind: JobKind;
}

/** One job with where and when it is done, and what can be said of it: done, put off, or that it will not be done. */
export function JobRow({ job, kind }: JobRowProps) {
  const slip = useSlip();
  const drop = useChange(ask.batches.dropStep.mutate);
  const [dropping, setDropping] = useState(false);
  const days = useDays();
  const about = { id: newId(), batchId: job.batchId, step: job.step };
  const mark = (doneOn: IsoDay) => void slip.propose({ kind: 'mark', change: { ...about, doneOn, note: null } });
  const keys = useJobKeys({
    onOpen: () => (job.opens === 'mark' ? mark(days.today) : goTo(addressOf(job))),
    onDone: () => mark(days.today),
    onPutOff: canBePutOff(job, kind, days.today) ? () => goTo(putOffAddress(job)) : null,
    onPrint: () => goTo(paperOf(job)),
  });
  const takesKeys = kind !== 'tomorrow';
  return (
    <li {...(takesKeys ? { ...keys, tabIndex: 0 } : {})}>
      <Where job={job} />
      <div className="what">
        <What job={job} kind={kind} />
        {dropping ? (
          <DropForm
            busy={drop.state.busy}
            onDrop={(reason) => void drop.run({ ...about, droppedOn: days.today, reason })}
            onBack={() => setDropping(false)}
          />
        ) : null}
        <ChangeLines {...slip.state} />
        <ChangeLines {...drop.state} />
        <AskedSlipDialog batch={job.batch} slip={slip} />
      </div>
      {kind === 'tomorrow' ? null : (
        <Acts job={job} kind={kind} onMark={mark} onDrop={dropping ? null : () => setDropping(true)} />
      )}
    </li>
  );
}

function Where({ job: { where } }: { job: Job }) {
  const { today: words } = useFirstWords();
  return (
    <div className="where">
      {where.kind === 'hive' ? (
        <a href={`#/hives/${where.id}`}>{where.code}</a>
      ) : where.kind === 'boxes' ? (
        <BoxCodes codes={where.codes} />
      ) : (
        <span className="soft small">{words.notChosen}</span>
      )}
    </div>
  );
}

function What({ job, kind }: JobRowProps) {
  const { today: words, stepTitles } = useFirstWords();
  const days = useDays();
  const when = {
    due: words.dueUntil(days.short(job.latest)),
    late: words.wasDue(days.short(job.latest)),
    early: words.anyDay(days.short(job.latest)),
    tomorrow: '',
  }[kind];
  return (
    <>
      <strong>{job.ownTitle ?? stepTitles[job.step]}</strong>{' '}
      <a className="nowrap" href={`#/batches/${job.batchId}`}>
        {job.batch}
      </a>
      <div className="soft small">
        {[job.yard, words.dayN(job.daysAfterLarvae), words.times[job.timeOfDay], when].filter(Boolean).join(' · ')}
      </div>
      {job.clash ? (
        <p className="line-notice">
          {words.clash(job.clash.batch)}
          {job.clash.alternatives.length > 0
            ? ` ${words.clashRemedy(job.clash.alternatives.map((day) => days.short(day)).join(', '))}`
            : ''}
        </p>
      ) : null}
      {kind === 'late' && !job.canBeDropped ? <p className="soft small">{words.dropNeeded}</p> : null}
    </>
  );
}

interface ActsProps extends JobRowProps {
  readonly onMark: (doneOn: IsoDay) => void;
  /** Missing while the reason is being typed. */
  readonly onDrop: (() => void) | null;
}

function Acts({ job, kind, onMark, onDrop }: ActsProps) {
  const { today: words, stepTitles } = useFirstWords();
  const days = useDays();
  const title = job.ownTitle ?? stepTitles[job.step];
  const isLateMark = kind === 'late' && job.opens === 'mark';
  return (
    <div className="job-acts">
      <Button
        variant={kind === 'early' ? 'text' : 'outlined'}
        title={job.opens === 'mark' ? words.keyOf.done : words.keyOf.open}
        onClick={() => (job.opens === 'mark' ? onMark(days.today) : goTo(addressOf(job)))}
      >
        {isLateMark ? words.doneToday : words.open[job.opens]}
      </Button>
      {isLateMark ? (
        <Button variant="text" onClick={() => onMark(job.expected)}>
          {words.doneThen(days.short(job.expected))}
        </Button>
      ) : null}
      {kind === 'late' && job.canBeDropped && onDrop ? (
        <Button variant="text" size="small" aria-label={words.dropRead(title, job.batch)} onClick={onDrop}>
          {words.drop}
        </Button>
      ) : null}
      {canBePutOff(job, kind, days.today) ? (
        <Button
          variant="text"
          size="small"
          aria-label={words.putOffRead(title, job.batch)}
          title={words.keyOf.putOff}
          onClick={() => goTo(putOffAddress(job))}
        >
          {words.putOff}
        </Button>
      ) : null}
    </div>
  );
}

const canBePutOff = (job: Job, kind: JobKind, today: IsoDay): boolean => kind === 'due' && job.latest > today;

const putOffAddress = (job: Job): string => `/batches/${job.batchId}?open=day-${job.step}`;

/** Labels where the boxes are known and are not looked into yet; else the sheet for the walk. */
const paperOf = (job: Job): string =>
  job.where.kind === 'boxes' && job.opens !== 'looks' ? `/print?batch=${job.batchId}` : '/print?sheet=walk';

/** The column a counting job is about. */
const COUNTED_BY: { readonly [Name in Step]?: string } = {
  'give-larvae': 'given',
  'count-taken': 'taken',
  'count-sealed': 'sealed',
};

function addressOf(job: Job): string {
  if (job.opens === 'looks') return `/boxes/looks?batch=${job.batchId}&step=${job.step}`;
  return `/batches/${job.batchId}?open=${job.opens === 'counts' ? `counts-${COUNTED_BY[job.step] ?? 'given'}` : 'place'}`;
}
