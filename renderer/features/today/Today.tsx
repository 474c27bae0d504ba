import { Button } from '@mui/material';
import type { Job, LeaveAlone, TodayView } from '../../../shared/contract/today.ts';
import { ask } from '../../client/client.ts';
import { useAnswer, useOtherWorkbook } from '../../client/hooks.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { ClashLines } from '../../components/ClashLines.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { HandsOffSign } from '../../components/HandsOffSign.tsx';
import { materialName } from '../../components/material-name.ts';
import { Page } from '../../components/Page.tsx';
import { goTo } from '../../components/routes.ts';
import { Section } from '../../components/Section.tsx';
import { StaleCalendar } from '../../components/StaleCalendar.tsx';
import { useDays, useFirstWords, useLetterKeys } from '../../components/words.ts';
import { BoxCodes } from './BoxCodes.tsx';
import { FollowUps } from './FollowUps.tsx';
import { type JobKind, JobRow } from './JobRow.tsx';
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
  const letterKeys = useLetterKeys();
  return (
    <>
      <div className="columns today">
        <div>
          <Section
            title={words.doToday}
            acts={view.due.length > 0 ? <span className="soft small">{words.minutes(view.minutesToday)}</span> : null}
          >
            <Jobs jobs={view.due} kind="due" empty={words.nothingToDo} />
            {view.due.length > 0 ? <p className="soft small no-print">{words.keys(letterKeys)}</p> : null}
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

function LeaveAloneList({ list, quiet }: { list: readonly LeaveAlone[]; quiet: TodayView['quietHives'] }) {
  const { today: words, stepTitles } = useFirstWords();
  const days = useDays();
  if (list.length + quiet.length === 0) return <p className="soft">{words.nothingToLeave}</p>;
  return (
    <ul className="leave">
      {list.map((one) => (
        <li key={`${one.what} ${one.batch}`} className="hatch">
          <div className="what hands-off">
            <HandsOffSign />{' '}
            {one.hiveId ? <a href={`#/hives/${one.hiveId}`}>{one.what}</a> : <BoxCodes codes={one.boxes} />}
          </div>
          <div>
            {words.until(days.short(one.until))}
            {one.hours ? `, ${words.hours(one.hours.from, one.hours.to)}` : `, ${words.allDay}`}
          </div>
          <div className="soft small">
            {stepTitles[one.step]} · <a href={`#/batches/${one.batchId}`}>{one.batch}</a>
            {one.yard ? ` · ${one.yard}` : ''}
          </div>
        </li>
      ))}
      <QuietHives quiet={quiet} />
    </ul>
  );
}
