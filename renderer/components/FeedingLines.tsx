import type { Feeding } from '../../shared/model/feeding.ts';
import { useFeedingWords } from './FeedingText.tsx';
import { useDays, useWords } from './words.ts';

interface FeedingLinesProps {
  readonly feedings: readonly Feeding[];
  readonly onRemove: (feedingId: string) => void;
  readonly busy: boolean;
}

/** The feedings of one hive or box; the latest in sight, the older ones in a fold. */
export function FeedingLines({ feedings, onRemove, busy }: FeedingLinesProps) {
  const { feeding: words } = useWords();
  const older = feedings.slice(LATEST);
  if (feedings.length === 0) return <p className="soft">{words.none}</p>;
  const lines = (some: readonly Feeding[]) => <Lines feedings={some} onRemove={onRemove} busy={busy} />;
  return (
    <>
      {lines(feedings.slice(0, LATEST))}
      {older.length > 0 ? (
        <details>
          <summary>{words.older(older.length)}</summary>
          {lines(older)}
        </details>
      ) : null}
    </>
  );
}

const LATEST = 5;

function Lines({ feedings, onRemove, busy }: FeedingLinesProps) {
  const { feeding: words } = useWords();
  const days = useDays();
  const { name, howMuch } = useFeedingWords();
  return (
    <dl className="facts" style={{ marginBottom: 10 }}>
      {feedings.map((one) => (
        <div key={one.id} style={{ display: 'contents' }}>
          <dt className="nowrap">{days.dated(one.fedOn)}</dt>
          <dd>
            {[name(one), howMuch(one), one.note].filter(Boolean).join(' · ')}{' '}
            <button
              type="button"
              className="as-text small"
              disabled={busy}
              aria-label={words.removeOf(days.short(one.fedOn), name(one))}
              onClick={() => onRemove(one.id)}
            >
              {words.remove}
            </button>
          </dd>
        </div>
      ))}
    </dl>
  );
}
