import { useState } from 'react';
import type { CalendarLine, CalendarPreview } from '../../../shared/contract/files.ts';
import { CALENDAR_ALARMS, type CalendarAlarm } from '../../../shared/model/calendar-export.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { saveMade } from '../../client/made-files.ts';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { DataTable } from '../../components/DataTable.tsx';
import type { Column } from '../../components/PlainTable.tsx';
import { Section } from '../../components/Section.tsx';
import { useDays, useWords } from '../../components/words.ts';
import { MakeActs } from './MakeActs.tsx';
import { useMaking } from './use-making.ts';

/** The calendar file of one batch or all, and what of it the phone does not know yet. */
export function CalendarFile() {
  const { calendarFile: words } = useWords();
  const [batchId, setBatchId] = useState('');
  const [alarm, setAlarm] = useState<CalendarAlarm | null>(null);
  const choice = { batchId: batchId || null, alarm };
  const preview = useAnswer(['calendar-file', choice], () => ask.files.previewCalendar.query(choice));
  const making = useMaking(
    ask.files.exportCalendar.mutate,
    async (file) => (await saveMade(file, words)) ?? words.made(file.events),
  );
  const batches = (preview.data?.batches ?? []).map(({ id, code }) => ({ value: id, text: code }));
  return (
    <Section title={words.title}>
      <div className="stack">
        <p className="soft">{words.explain}</p>
        <div className="columns">
          <ChoiceField
            label={words.which}
            value={batchId}
            choices={[{ value: '', text: words.all }, ...batches]}
            onChange={setBatchId}
          />
          <ChoiceField
            label={words.reminder}
            value={alarm ?? preview.data?.lastAlarm ?? 'none'}
            choices={CALENDAR_ALARMS.map((value) => ({ value, text: words.alarms[value] }))}
            onChange={setAlarm}
          />
        </div>
        {preview.data ? <WhatIsStale preview={preview.data} /> : null}
        <MakeActs label={words.save} making={making} onMake={() => void making.run(choice)} />
      </div>
    </Section>
  );
}

/** So many lines are read at a glance; more open on a click. */
const FEW = 12;

/** One sentence on the last file, then the events that a phone which took it in has wrong or not at all. */
function WhatIsStale({ preview: { lines, lastExportedOn } }: { preview: CalendarPreview }) {
  const { calendarFile: words } = useWords();
  const days = useDays();
  if (lines.length === 0) return <p>{words.nothing}</p>;
  const stale = lines.filter(({ change }) => change !== 'same');
  const sentence =
    lastExportedOn === null
      ? words.never(stale.length)
      : stale.length === 0
        ? words.fresh(days.short(lastExportedOn))
        : words.stale(days.short(lastExportedOn), stale.length);
  return (
    <>
      <p className={lastExportedOn !== null && stale.length > 0 ? 'line-notice' : undefined}>{sentence}</p>
      {stale.length > 0 ? (
        <details open={lastExportedOn !== null && stale.length <= FEW}>
          <summary>{words.list}</summary>
          <DataTable
            caption={words.title}
            rows={stale}
            rowKey={({ uid }) => uid}
            columns={columnsOf(words, (line) => daysText(line, days.short))}
          />
        </details>
      ) : null}
    </>
  );
}

type CalendarWords = ReturnType<typeof useWords>['calendarFile'];

const columnsOf = (words: CalendarWords, day: (line: CalendarLine) => string): readonly Column<CalendarLine>[] => [
  { key: 'event', title: words.columns.event, head: true, cell: ({ summary }) => summary },
  { key: 'day', title: words.columns.day, cell: day },
  { key: 'change', title: words.columns.change, cell: (line) => words.changes[line.change] },
];

const daysText = ({ from, to }: CalendarLine, short: (day: string) => string): string =>
  from === to ? short(from) : `${short(from)} – ${short(to)}`;
