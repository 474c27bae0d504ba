import { PLACES, type PlaceName } from '../../shared/contract/shell.ts';
import type { WorkbookState } from '../../shared/contract/workbook.ts';
import { ask } from '../client/client.ts';
import { useAnswer } from '../client/hooks.ts';
import { useFirstWords } from '../components/words.ts';

const FOOT = ['history', 'settings', 'help'] as const;

export function SideBar({ place, open }: { place: string; open: NonNullable<WorkbookState['open']> }) {
  const { frame } = useFirstWords();
  const today = useAnswer(['today'], () => ask.today.getToday.query());
  const batches = useAnswer(['batches'], () => ask.batches.listBatches.query());
  const counts: Partial<Record<PlaceName | (typeof FOOT)[number], number>> = {
    today: (today.data?.due.length ?? 0) + (today.data?.late.length ?? 0),
    batches: batches.data?.filter((batch) => batch.state === 'running').length ?? 0,
  };
  const link = (key: PlaceName | (typeof FOOT)[number], keys?: string) => {
    const count = counts[key];
    return (
      <li key={key}>
        <a href={`#/${key}`} title={keys} aria-current={place === key ? 'page' : undefined}>
          {frame.places[key]}
          {count ? <span className="count">{count}</span> : null}
        </a>
      </li>
    );
  };
  return (
    <nav className="side" aria-label={frame.sideBar}>
      <div className="name">
        <strong>{open.kind === 'practice' ? frame.practice : open.name}</strong>
        <span>{open.season}</span>
      </div>
      <ul>{PLACES.map((key, index) => link(key, frame.placeKeys(index + 1)))}</ul>
      <ul className="foot">{FOOT.map((key) => link(key))}</ul>
    </nav>
  );
}
