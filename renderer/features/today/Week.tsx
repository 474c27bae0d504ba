import type { TodayView } from '../../../shared/contract/today.ts';
import { DataTable } from '../../components/DataTable.tsx';
import { materialName } from '../../components/material-name.ts';
import { Section } from '../../components/Section.tsx';
import { useDays, useWords } from '../../components/words.ts';

/** What each day of the coming week asks for: jobs, time, things to bring. */
export function Week({ days }: { days: TodayView['week'] }) {
  const { today: words, steps, materials } = useWords();
  const text = useDays();
  const { weekColumns } = words;
  return (
    <Section title={words.week}>
      {days.length === 0 ? (
        <p className="soft">{words.nothingThisWeek}</p>
      ) : (
        <DataTable
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
                    {steps[job.step].title}{' '}
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
