import type { RateFigure } from '../../shared/contract/season.ts';
import { perCent, perCentRange } from '../../shared/text/share-text.ts';
import { useAmount, useWords } from './words.ts';

/** A share with its counts, its range and the batches it rests on; never a bare percentage. */
export function Figure({ figure }: { figure: RateFigure | null }) {
  const { season } = useWords();
  const amount = useAmount();
  if (!figure || figure.rate === null) return <span className="soft">{season.none}</span>;
  return (
    <span>
      <strong>{perCent(figure.rate)}</strong>{' '}
      <span className="soft nowrap">{season.figure(amount(figure.successes), amount(figure.of))}</span>
      <br />
      <span className="soft small">
        {figure.batches === 1
          ? season.oneBatch
          : `${figure.interval ? `${perCentRange(figure.interval.lower, figure.interval.upper)}, ` : ''}${season.batchesN(figure.batches)}`}
      </span>
    </span>
  );
}
