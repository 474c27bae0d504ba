import { FEED_AMOUNTS } from '../../shared/biology/feed-amounts.ts';
import { FEEDS, type Feed } from '../../shared/model/feeding.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { TextField } from './TextField.tsx';
import { useFeedAmounts, useWords } from './words.ts';

interface FeedChoiceProps {
  readonly feed: Feed;
  readonly ownFeed: string;
  readonly onFeed: (feed: Feed) => void;
  readonly onOwnFeed: (name: string) => void;
  readonly problem?: string | null;
}

/** What is fed, from the list or in the person's own words. */
export function FeedChoice({ feed, ownFeed, onFeed, onOwnFeed, problem }: FeedChoiceProps) {
  const { feeding: words } = useWords();
  return (
    <>
      <ChoiceField
        label={words.feed}
        value={feed}
        choices={FEEDS.map((value) => ({ value, text: words.feeds[value] }))}
        onChange={onFeed}
      />
      {feed === 'other' ? (
        <TextField label={words.ownFeed} value={ownFeed} onChange={onOwnFeed} problem={problem ?? null} required />
      ) : null}
    </>
  );
}

/** How much is usual, and what to mind. */
export function FeedCaution({ feed }: { feed: Feed }) {
  const { feeding: words } = useWords();
  const { text } = useFeedAmounts();
  const usual = feed in FEED_AMOUNTS ? (feed as keyof typeof FEED_AMOUNTS) : null;
  const said = (amount: number, measure: 'litres' | 'kilograms') =>
    text({ litres: null, kilograms: null, [measure]: amount });
  return (
    <>
      <p className="line-notice">{words.caution}</p>
      {usual === null ? null : (
        <p className="soft small">
          {words.usual[usual](
            said(FEED_AMOUNTS[usual].range[0], FEED_AMOUNTS[usual].unit),
            said(FEED_AMOUNTS[usual].range[1], FEED_AMOUNTS[usual].unit),
          )}
        </p>
      )}
    </>
  );
}
