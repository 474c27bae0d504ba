import type { Feeding } from '../../shared/model/feeding.ts';
import { useDays, useFeedAmounts, useWords } from './words.ts';

/** One feeding in a line: day, feed and how much. */
export function FeedingText({ feeding }: { feeding: Feeding }) {
  const days = useDays();
  return `${days.dated(feeding.fedOn)}, ${useFeedingWords()(feeding)}`;
}

/** The feed and how much of it, with what was noted. */
export function useFeedingWords(): (feeding: Feeding) => string {
  const { feeding: words } = useWords();
  const { text } = useFeedAmounts();
  return ({ feed, ownFeed, note, ...amount }) =>
    [ownFeed ?? words.feeds[feed], text(amount) || words.unknownAmount, note].filter(Boolean).join(' · ');
}
