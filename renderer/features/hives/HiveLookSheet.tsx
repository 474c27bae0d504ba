import { useState } from 'react';
import { ask } from '../../client/client.ts';
import { dayOfSheet, otherSheets } from '../../client/draft-text.ts';
import { useDrafts } from '../../client/drafts.ts';
import { useAnswer } from '../../client/hooks.ts';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { DayField } from '../../components/DayField.tsx';
import { Page } from '../../components/Page.tsx';
import { SheetDrafts } from '../../components/SheetDrafts.tsx';
import { useSheetDay } from '../../components/use-sheet-day.ts';
import { WriterChoice } from '../../components/WriterChoice.tsx';
import { useDays, useWords } from '../../components/words.ts';
import { HiveLookGrid } from './HiveLookGrid.tsx';

/** The evening's typing for hives: one row a hive, strength, food and what was seen. */
export function HiveLookSheet() {
  const { hives: words } = useWords();
  const days = useDays();
  const { typed, day, set } = useSheetDay();
  const [yardId, setYardId] = useState('');
  const hives = useAnswer(['hives'], () => ask.hives.listHives.query());
  const asked = { yardId: yardId || null, sheetDay: day };
  const view = useAnswer(['hive-looks', asked], () => ask.hives.getHiveLookSheet.query(asked));
  const yards = (hives.data?.yards ?? []).map((yard) => ({ value: yard.id, text: yard.name }));
  const drafts = useDrafts();
  const ready = drafts.list && view.data && !view.isPlaceholderData ? view.data : null;
  const waiting = otherSheets('hive-look', `hive-look:${day}`, drafts.list ?? {});
  return (
    <Page lead={<a href="#/hives">{words.title}</a>} title={words.sheet.title}>
      <div className="row" style={{ marginBottom: 18 }}>
        <ChoiceField
          label={words.yard}
          value={yardId}
          choices={[{ value: '', text: words.sheet.allYards }, ...yards]}
          onChange={setYardId}
        />
        <DayField label={words.sheet.day} value={typed} onChange={set} />
        <WriterChoice />
      </div>
      <SheetDrafts sheets={waiting.map(dayOfSheet)} text={days.short} onShow={set} />
      {ready?.rows.length === 0 ? <p>{words.empty}</p> : null}
      {ready && ready.rows.length > 0 ? <HiveLookGrid key={`${yardId} ${day}`} view={ready} /> : null}
    </Page>
  );
}
