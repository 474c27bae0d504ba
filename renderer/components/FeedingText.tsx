import type { Feeding } from '../../shared/model/feeding.ts';
import { useDays, useFeedAmounts, useWords } from './words.ts';

/** One feeding in a line: day, feed and how much. */
export function FeedingText({ feeding }: { feeding: Feeding }) {
  const days = useDays();
  const { name, howMuch } = useFeedingWords();
  return (
    <>
      <span className="nowrap">{days.dated(feeding.fedOn)}</span>, {name(feeding)},{' '}
      <span className="nowrap">{howMuch(feeding)}</span>
    </>
  );
}

/** The name of a feed, and how much was given of it. */
export function useFeedingWords() {
  const { feeding: words } = useWords();
  const { text } = useFeedAmounts();
  return {
    name: ({ feed, ownFeed }: Feeding) => ownFeed ?? words.feeds[feed],
    howMuch: (feeding: Feeding) => text(feeding) || words.unknownAmount,
  };
}
