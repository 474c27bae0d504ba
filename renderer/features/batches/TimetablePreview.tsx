import type { BatchStart } from '../../../shared/contract/batches.ts';
import type { WorkAhead } from '../../../shared/contract/timetable.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { DataTable } from '../../components/DataTable.tsx';
import { materialName } from '../../components/material-name.ts';
import { useDays, useSentences, useWords } from '../../components/words.ts';
import { DroneLines } from './DroneLines.tsx';

/** The days a batch would have, asked anew with every change of the form. */
export function TimetablePreview({ input }: { input: BatchStart }) {
  const say = useSentences();
  const { batches: words } = useWords();
  const days = useDays();
  const preview = useAnswer(['preview', JSON.stringify(input)], () => ask.batches.previewBatch.query(input));
  if (!preview.data) return null;
  if (!preview.data.ok)
    return (
      <p className="line-problem" role="status">
        {say.refusal(preview.data.refusal)}
      </p>
    );
  const { lines, emergence, placeDeadline, drones, work } = preview.data.value;
  return (
    <>
      <p style={{ marginBottom: 10 }}>
        <strong>
          {words.one.emergence(
            days.short(emergence.earliest),
            days.short(emergence.expected),
            days.short(emergence.latest),
          )}
        </strong>
        <br />
        <span className="soft">{words.one.deadline(days.short(placeDeadline))}</span>
      </p>
      <p className="soft" style={{ marginBottom: 10 }}>
        <DroneLines drones={drones} queens={input.cellsPlanned} />
      </p>
      {work ? <Work work={work} /> : null}
      <DataTable
        caption={words.form.timetable}
        rows={lines}
        rowKey={(line) => line.step}
        quiet={(line) => line.kind !== 'job'}
        columns={[
          {
            key: 'day',
            title: words.one.columns.day,
            cell: (line) => <span className="nowrap">{days.short(line.expected)}</span>,
          },
          {
            key: 'step',
            title: words.one.columns.step,
            head: true,
            cell: (line) => (
              <span className={line.kind === 'hands-off' ? 'hands-off' : undefined}>
                {line.own.title ?? say.step(line.step, input.method, input.builderType)}
              </span>
            ),
          },
          {
            key: 'window',
            title: words.one.columns.window,
            cell: (line) => (
              <span className="soft nowrap">
                {words.one.window(days.short(line.earliest), days.short(line.latest))}
              </span>
            ),
          },
        ]}
      />
    </>
  );
}

/** How long the jobs take, and what has to be there for them. */
function Work({ work: { minutes, days: count, longest, materials } }: { work: WorkAhead }) {
  const { batches: words, today, materials: names } = useWords();
  const days = useDays();
  const things = materials.map((material) => materialName(names, material)).join(', ');
  return (
    <p className="soft" style={{ marginBottom: 10 }}>
      {words.form.work(today.minutes(minutes), count, today.minutes(longest.minutes), days.short(longest.on))}{' '}
      {things === '' ? '' : words.form.needed(things)}
    </p>
  );
}
