import { ask } from '../../client/client.ts';
import { dayOfSheet, otherSheets } from '../../client/draft-text.ts';
import { useDrafts } from '../../client/drafts.ts';
import { useAnswer } from '../../client/hooks.ts';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { DayField } from '../../components/DayField.tsx';
import { Page } from '../../components/Page.tsx';
import { goTo } from '../../components/routes.ts';
import { SheetDrafts } from '../../components/SheetDrafts.tsx';
import { useSheetDay } from '../../components/use-sheet-day.ts';
import { WriterChoice } from '../../components/WriterChoice.tsx';
import { useDays, useWords } from '../../components/words.ts';
import { LookGrid } from './LookGrid.tsx';

const LOOK_STEPS = ['emergence-check', 'first-look', 'sealed-brood-look'] as const;

/** The evening's typing: the boxes in walking order, one key each. */
export function LookSheet({ batchId, step }: { batchId: string | null; step: string | null }) {
  const words = useWords();
  const { sheet } = words.boxes;
  const days = useDays();
  const drafts = useDrafts();
  const { typed, day, set } = useSheetDay();
  const lookStep = LOOK_STEPS.find((one) => one === step) ?? null;
  const batches = useAnswer(['batches'], () => ask.batches.listBatches.query());
  const view = useAnswer(['looks', batchId, lookStep, day], () =>
    ask.boxes.getLookSheet.query({ batchId, step: lookStep, sheetDay: day }),
  );
  const choices = [
    { value: '', text: sheet.allBoxes },
    ...(batches.data ?? [])
      .filter((batch) => batch.tally.placed > 0 && (batch.state === 'running' || batch.id === batchId))
      .map((batch) => ({ value: batch.id, text: batch.code })),
  ];
  return (
    <Page lead={<a href="#/boxes">{words.boxes.title}</a>} title={sheet.title}>
      <div className="row" style={{ marginBottom: 18 }}>
        <div style={{ minWidth: 260 }}>
          <ChoiceField
            label={sheet.which}
            value={batchId ?? ''}
            choices={choices}
            onChange={(value) => goTo(value ? `/boxes/looks?batch=${value}` : '/boxes/looks')}
          />
        </div>
        <div style={{ minWidth: 260 }}>
          <DayField label={sheet.day} value={typed} onChange={set} />
        </div>
        <WriterChoice />
      </div>
      <SheetDrafts
        sheets={otherSheets('box-look', `box-look:${day}`, drafts.list ?? {}).map(dayOfSheet)}
        text={days.short}
        onShow={set}
      />
      {view.data?.rows.length === 0 ? <p>{sheet.empty}</p> : null}
      {drafts.list && view.data && !view.isPlaceholderData && view.data.rows.length > 0 ? (
        <LookGrid key={`${batchId} ${day}`} view={view.data} askedAt={view.dataUpdatedAt} sheetDay={day} />
      ) : null}
    </Page>
  );
}
