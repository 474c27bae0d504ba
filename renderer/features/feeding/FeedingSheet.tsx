import { useState } from 'react';
import type { IsoDay } from '../../../shared/kernel/day.ts';
import { type Feed, feedMeasure } from '../../../shared/model/feeding.ts';
import { ask } from '../../client/client.ts';
import { otherSheets } from '../../client/draft-text.ts';
import { useDrafts } from '../../client/drafts.ts';
import { useAnswer } from '../../client/hooks.ts';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { DayField } from '../../components/DayField.tsx';
import { FeedCaution, FeedChoice } from '../../components/FeedChoice.tsx';
import { Page } from '../../components/Page.tsx';
import { SheetDrafts } from '../../components/SheetDrafts.tsx';
import { useSheetDay } from '../../components/use-sheet-day.ts';
import { WriterChoice } from '../../components/WriterChoice.tsx';
import { useDays, useWords } from '../../components/words.ts';
import { FeedingGrid } from './FeedingGrid.tsx';
import { FeedSeveral } from './FeedSeveral.tsx';
import { feedingSheet, readFeedingSheet, type SheetFeed } from './typed-feeding.ts';

type Places = SheetFeed['places'];

interface FeedingSheetProps {
  readonly opensWith: Places;
  /** Codes of boxes that were chosen to be fed the same; null = none were. */
  readonly several?: string | null;
}

/** The evening's typing of what was fed: one feed and one day, a row for each hive or mating box. */
export function FeedingSheet({ opensWith, several = null }: FeedingSheetProps) {
  const { feeding: words, hives: hiveWords, boxes } = useWords();
  const days = useDays();
  const { typed, day, set } = useSheetDay();
  const [places, setPlaces] = useState<Places>(opensWith);
  const [yardId, setYardId] = useState('');
  const [feed, setFeed] = useState<Feed>(opensWith === 'boxes' ? 'fondant' : 'syrup-1-1');
  const [ownName, setOwnName] = useState('');
  const ownFeed = feed === 'other' ? ownName.trim() : null;
  const named = ownFeed !== '';
  const hives = useAnswer(['hives'], () => ask.hives.listHives.query());
  const asked = { places, yardId: yardId || null, sheetDay: day, feed, ownFeed };
  const view = useAnswer(['feeding-sheet', asked], () => ask.feeding.getFeedingSheet.query(asked), named);
  const drafts = useDrafts();
  const ready = named && drafts.list && view.data && !view.isPlaceholderData ? view.data : null;
  const yards = (hives.data?.yards ?? []).map((yard) => ({ value: yard.id, text: yard.name }));
  const sheet = { places, feed, ownFeed };
  const waiting = otherSheets('feeding', feedingSheet({ ...sheet, day }), drafts.list ?? {});
  const show = (other: SheetFeed & { readonly day: IsoDay }) => {
    setPlaces(other.places);
    setFeed(other.feed);
    setOwnName(other.ownFeed ?? '');
    set(other.day);
  };
  return (
    <Page
      lead={places === 'hives' ? <a href="#/hives">{hiveWords.title}</a> : <a href="#/boxes">{boxes.title}</a>}
      title={words.title}
    >
      <div className="row" style={{ marginBottom: 14 }}>
        <ChoiceField
          label={words.places}
          value={places}
          choices={(['hives', 'boxes'] as const).map((value) => ({ value, text: words.placesOf[value] }))}
          onChange={setPlaces}
        />
        <ChoiceField
          label={words.yard}
          value={yardId}
          choices={[{ value: '', text: words.allYards }, ...yards]}
          onChange={setYardId}
        />
        <DayField label={words.day} value={typed} onChange={set} />
        <WriterChoice />
        <FeedChoice feed={feed} ownFeed={ownName} onFeed={setFeed} onOwnFeed={setOwnName} />
      </div>
      <SheetDrafts
        sheets={waiting.flatMap((one) => readFeedingSheet(one) ?? [])}
        text={(one) =>
          [words.placesOf[one.places], one.ownFeed ?? words.feeds[one.feed], days.short(one.day)].join(', ')
        }
        onShow={show}
      />
      <FeedCaution feed={feed} />
      <FeedSeveral chosen={several} day={day} feed={feed} ownFeed={ownFeed} measure={feedMeasure(feed)} />
      {named ? null : <p>{words.nameFirst}</p>}
      {ready?.rows.length === 0 ? <p>{words.nobody}</p> : null}
      {ready && ready.rows.length > 0 ? <FeedingGrid key={JSON.stringify(asked)} view={ready} sheet={sheet} /> : null}
    </Page>
  );
}
