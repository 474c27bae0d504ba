import type { WorkbookState } from '../../shared/contract/workbook.ts';
import { ask } from '../client/client.ts';
import { useAnswer } from '../client/hooks.ts';
import { useFirstWords } from '../components/words.ts';

const PLACES = ['today', 'batches', 'hives', 'boxes', 'queens', 'season', 'print', 'files', 'class'] as const;
const FOOT = ['history', 'settings', 'help'] as const;

export function SideBar({ place, open }: { place: string; open: NonNullable<WorkbookState['open']> }) {
  const { frame } = useFirstWords();
  const today = useAnswer(['today'], () => ask.today.getToday.query());
  const batches = useAnswer(['batches'], () => ask.batches.listBatches.query());
  const counts: Partial<Record<(typeof PLACES)[number], number>> = {
    today: (today.data?.due.length ?? 0) + (today.data?.late.length ?? 0),
    batches: batches.data?.filter((batch) => batch.state === 'running').length ?? 0,
  };
  const link = (key: (typeof PLACES)[number] | (typeof FOOT)[number]) => {
    const count = key in counts ? counts[key as (typeof PLACES)[number]] : 0;
    return (
      <li key={key}>
        <a href={`#/${key}`} aria-current={place === key ? 'page' : undefined}>
          {frame.places[key]}
          {count ? <span className="count">{count}</span> : null}
        </a>
      </li>
    );
  };
  return (
    <nav className="side" aria-label={frame.sideBar}>
      <div className="name">
        <strong>{open.name}</strong>
        <span>{open.season}</span>
      </div>
      <ul>{PLACES.map(link)}</ul>
      <ul className="foot">{FOOT.map(link)}</ul>
    </nav>
  );
}
