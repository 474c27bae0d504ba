import type { TodayView } from '../../../shared/contract/today.ts';
import { materialName } from '../../components/material-name.ts';
import { PlainTable } from '../../components/PlainTable.tsx';
import { Section } from '../../components/Section.tsx';
import { useDays, useFirstWords } from '../../components/words.ts';

/** What each day of the coming week asks for: jobs, time, things to bring. */
export function Week({ days }: { days: TodayView['week'] }) {
  const { today: words, stepTitles, materials } = useFirstWords();
  const text = useDays();
  const { weekColumns } = words;
  return (
    <Section title={words.week}>
      {days.length === 0 ? (
        <p className="soft">{words.nothingThisWeek}</p>
      ) : (
        <PlainTable
          caption={words.week}
          rows={days}
          rowKey={(day) => day.on}
          columns={[
            {
              key: 'day',
              title: weekColumns.day,
              head: true,
              cell: (day) => <span className="nowrap">{text.short(day.on)}</span>,
            },
            {
              key: 'jobs',
              title: weekColumns.jobs,
              cell: (day) =>
                day.jobs.map((job) => (
                  <div key={`${job.batchId} ${job.step}`}>
                    {stepTitles[job.step]}{' '}
                    <a className="nowrap" href={`#/batches/${job.batchId}`}>
                      {job.batch}
                    </a>
                  </div>
                )),
            },
            { key: 'minutes', title: weekColumns.minutes, cell: (day) => words.minutes(day.minutes) },
            {
              key: 'bring',
              title: weekColumns.bring,
              cell: (day) => day.materials.map(({ material }) => materialName(materials, material)).join(', '),
            },
          ]}
        />
      )}
    </Section>
  );
}
