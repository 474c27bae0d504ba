import type { TodayView } from '../../../shared/contract/today.ts';
import { HandsOffSign } from '../../components/HandsOffSign.tsx';
import { useDays, useFirstWords } from '../../components/words.ts';

/** Hives with a queen just brought in, as lines of the list of what to leave alone. */
export function QuietHives({ quiet }: { quiet: TodayView['quietHives'] }) {
  const { today: words, followUps } = useFirstWords();
  const days = useDays();
  return quiet.map((one) => (
    <li key={one.id} className="hatch">
      <div className="what hands-off">
        <HandsOffSign /> <a href={`#/hives/${one.id}`}>{one.code}</a>
      </div>
      <div>{`${words.until(days.short(one.until))}, ${words.allDay}`}</div>
      <div className="soft small">
        {followUps.broughtIn(one.queen)}
        {one.yard ? ` · ${one.yard}` : ''}
      </div>
    </li>
  ));
}
