import { Button } from '@mui/material';
import type { Job, LeaveAlone, TodayView } from '../../../shared/contract/today.ts';
import { shortCodes } from '../../../shared/kernel/box-codes.ts';
import type { IsoDay } from '../../../shared/kernel/day.ts';
import type { Step } from '../../../shared/model/step.ts';
import { ask } from '../../client/client.ts';
import { newId, useAnswer, useOtherWorkbook } from '../../client/hooks.ts';
import { useSlip } from '../../client/use-slip.ts';
import { AskedSlipDialog } from '../../components/AskedSlipDialog.tsx';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { ClashLines } from '../../components/ClashLines.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { HandsOffSign } from '../../components/HandsOffSign.tsx';
import { materialName } from '../../components/material-name.ts';
import { Page } from '../../components/Page.tsx';
import { goTo } from '../../components/routes.ts';
import { Section } from '../../components/Section.tsx';
import { StaleCalendar } from '../../components/StaleCalendar.tsx';
import { useDays, useFirstWords } from '../../components/words.ts';
import { FollowUps } from './FollowUps.tsx';
import { QuietHives } from './QuietHives.tsx';
import { TodayWeather } from './TodayWeather.tsx';
import { Week } from './Week.tsx';

/** What to do, and just as large what to leave alone. */
export function Today() {
  const { today: words } = useFirstWords();
  const view = useAnswer(['today'], () => ask.today.getToday.query());
  if (!view.data) return <Page title={words.title}>{null}</Page>;
  return (
    <Page title={words.title} acts={<TodayActs />}>
      {view.data.anyBatch ? <Days view={view.data} /> : <Empty />}
    </Page>
  );
}

function TodayActs() {
  const { today: words } = useFirstWords();
  return (
    <>
      <Button onClick={() => goTo('/today/steps')}>{words.typeSteps}</Button>
      <Button onClick={() => goTo('/print')}>{words.yardSheet}</Button>
      <Button variant="outlined" onClick={() => goTo('/batches/new')}>
        {words.start}
      </Button>
    </>
  );
}

/** Nothing begun yet: the next act, and where a filled day can be seen. */
function Empty() {
  const { today: words } = useFirstWords();
  const demo = useOtherWorkbook(() => ask.workbook.openDemo.mutate());
  return (
    <EmptyState title={words.emptyTitle} line={words.empty}>
      <div className="acts">
        <Button variant="contained" onClick={() => goTo('/batches/new')}>
          {words.start}
        </Button>
        <Button onClick={() => goTo('/season?tab=plan')}>{words.planSeason}</Button>
        <Button disabled={demo.state.busy} onClick={() => void demo.run(undefined)}>
          {words.seeDemo}
        </Button>
      </div>
      <ChangeLines {...demo.state} />
    </EmptyState>
  );
}

function Days({ view }: { view: TodayView }) {
  const { today: words, materials } = useFirstWords();
  return (
    <>
      <div className="columns today">
        <div>
          <Section
            title={words.doToday}
            acts={view.due.length > 0 ? <span className="soft small">{words.minutes(view.minutesToday)}</span> : null}
          >
            <Jobs jobs={view.due} kind="due" empty={words.nothingToDo} />
          </Section>
          <FollowUps />
          {view.late.length > 0 ? (
            <Section title={words.late}>
              <Jobs jobs={view.late} kind="late" empty="" />
            </Section>
          ) : null}
          {view.early.length > 0 ? (
            <Section title={words.early}>
              <Jobs jobs={view.early} kind="early" empty="" />
            </Section>
          ) : null}
        </div>
        <div>
          <Section title={words.leaveAlone}>
            <LeaveAloneList list={view.leaveAlone} quiet={view.quietHives} />
          </Section>
          <ClashesAhead />
          <Section title={words.tomorrow} level={3}>
            <Jobs jobs={view.tomorrow} kind="tomorrow" empty={words.nothingTomorrow} />
          </Section>
          {view.bring.length > 0 ? (
            <Section title={words.bring} level={3}>
              <p>{view.bring.map(({ material }) => materialName(materials, material)).join(', ')}</p>
            </Section>
          ) : null}
        </div>
      </div>
      <StaleCalendar batchId={null} />
      <Week days={view.week} />
      <TodayWeather />
    </>
  );
}

/** What cannot go as planned, and what would resolve it. */
function ClashesAhead() {
  const { clashes: words } = useFirstWords();
  const answer = useAnswer(['clashes', null], () => ask.batches.listClashes.query({ batchId: null }));
  if (!answer.data || answer.data.clashes.length === 0) return null;
  return (
    <Section title={words.ahead}>
      <ClashLines list={answer.data} />
    </Section>
  );
}

type JobKind = 'due' | 'late' | 'early' | 'tomorrow';

function Jobs({ jobs, kind, empty }: { jobs: readonly Job[]; kind: JobKind; empty: string }) {
  if (jobs.length === 0) return <p className="soft">{empty}</p>;
  return (
    <ul className="jobs">
      {jobs.map((job) => (
        <JobRow key={`${job.batchId} ${job.step}`} job={job} kind={kind} />
      ))}
    </ul>
  );
}

function JobRow({ job, kind }: { job: Job; kind: JobKind }) {
  const { today: words, stepTitles } = useFirstWords();
  const days = useDays();
  const slip = useSlip();
  const when = {
    due: words.dueUntil(days.short(job.latest)),
    late: words.wasDue(days.short(job.latest)),
    early: words.anyDay(days.short(job.latest)),
    tomorrow: '',
  }[kind];
  const time = words.times[job.timeOfDay];
  const title = job.ownTitle ?? stepTitles[job.step];
  const isLateMark = kind === 'late' && job.opens === 'mark';
  const mark = (doneOn: IsoDay) => {
    const change = { id: newId(), batchId: job.batchId, step: job.step, doneOn, note: null };
    void slip.propose({ kind: 'mark', change });
  };
  return (
    <li>
      <div className="where">
        {job.where.kind === 'hive' ? (
          <a href={`#/hives/${job.where.id}`}>{job.where.code}</a>
        ) : job.where.kind === 'boxes' ? (
          shortCodes(job.where.codes)
        ) : (
          <span className="soft small">{words.notChosen}</span>
        )}
      </div>
      <div className="what">
        <strong>{title}</strong>{' '}
        <a className="nowrap" href={`#/batches/${job.batchId}`}>
          {job.batch}
        </a>
        <div className="soft small">
          {[job.yard, words.dayN(job.daysAfterLarvae), time, when].filter(Boolean).join(' · ')}
        </div>
        {job.clash ? (
          <p className="line-notice">
            {words.clash(job.clash.batch)}
            {job.clash.alternatives.length > 0
              ? ` ${words.clashRemedy(job.clash.alternatives.map((day) => days.short(day)).join(', '))}`
              : ''}
          </p>
        ) : null}
        <ChangeLines {...slip.state} />
        <AskedSlipDialog batch={job.batch} slip={slip} />
      </div>
      {kind === 'tomorrow' ? null : (
        <div className="job-acts">
          <Button
            variant={kind === 'early' ? 'text' : 'outlined'}
            onClick={() => (job.opens === 'mark' ? mark(days.today) : goTo(addressOf(job)))}
          >
            {isLateMark ? words.doneToday : words.open[job.opens]}
          </Button>
          {isLateMark ? (
            <Button variant="text" onClick={() => mark(job.expected)}>
              {words.doneThen(days.short(job.expected))}
            </Button>
          ) : null}
          {kind === 'due' && job.latest > days.today ? (
            <Button
              variant="text"
              size="small"
              aria-label={words.putOffRead(title, job.batch)}
              onClick={() => goTo(`/batches/${job.batchId}?open=day-${job.step}`)}
            >
              {words.putOff}
            </Button>
          ) : null}
        </div>
      )}
    </li>
  );
}

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

function LeaveAloneList({ list, quiet }: { list: readonly LeaveAlone[]; quiet: TodayView['quietHives'] }) {
  const { today: words, stepTitles } = useFirstWords();
  const days = useDays();
  if (list.length + quiet.length === 0) return <p className="soft">{words.nothingToLeave}</p>;
  return (
    <ul className="leave">
      {list.map((one) => (
        <li key={`${one.what} ${one.batch}`} className="hatch">
          <div className="what hands-off">
            <HandsOffSign /> {one.what}
          </div>
          <div>
            {words.until(days.short(one.until))}
            {one.hours ? `, ${words.hours(one.hours.from, one.hours.to)}` : `, ${words.allDay}`}
          </div>
          <div className="soft small">
            {stepTitles[one.step]} · {one.batch}
            {one.yard ? ` · ${one.yard}` : ''}
          </div>
        </li>
      ))}
      <QuietHives quiet={quiet} />
    </ul>
  );
}
