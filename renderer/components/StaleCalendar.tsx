import type { CalendarLine } from '../../shared/contract/files.ts';
import { ask } from '../client/client.ts';
import { useAnswer } from '../client/hooks.ts';
import { useDays, useFirstWords } from './words.ts';

/** So many are told in words; the rest stands in the list beside the file. */
const TOLD = 3;

/** What a phone that took in the last calendar file has wrong by now; nothing at all while it is right. */
export function StaleCalendar({ batchId }: { batchId: string | null }) {
  const words = useFirstWords().today.calendar;
  const days = useDays();
  const { data } = useAnswer(['calendar-stale', batchId], () => ask.files.getStaleCalendar.query({ batchId }));
  if (!data) return null;
  const { since, lines } = data;
  const day = ({ from, to }: Pick<CalendarLine, 'from' | 'to'>) =>
    from === to ? days.short(from) : `${days.short(from)} – ${days.short(to)}`;
  const told = lines.slice(0, TOLD).map((line) => {
    if (line.change === 'cancelled') return words.cancelled(line.summary);
    if (line.before === null) return words.added(line.summary, day(line));
    return line.before === line.from
      ? words.other(line.summary)
      : words.moved(line.summary, days.short(line.before), day(line));
  });
  return (
    <div className="section">
      <p>
        {words.stale(days.short(since), lines.length)}{' '}
        <a className="nowrap" href="#/files">
          {words.makeNew}
        </a>
      </p>
      <p className="soft small">
        {told.join('; ')}
        {lines.length > TOLD ? `; ${words.more(lines.length - TOLD)}` : ''}.
      </p>
    </div>
  );
}
