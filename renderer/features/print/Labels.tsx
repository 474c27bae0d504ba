import { Button } from '@mui/material';
import { useState } from 'react';
import type { LabelChoice, LabelOffer, PrintedFile, PrintSetup, WaitingLabel } from '../../../shared/contract/print.ts';
import { shortCodes } from '../../../shared/kernel/box-codes.ts';
import { LABEL_SHEETS, type LabelSheet } from '../../../shared/model/label-sheet.ts';
import { ask, shell } from '../../client/client.ts';
import { useAnswer, useChange } from '../../client/hooks.ts';
import { openPdf, saveMade } from '../../client/made-files.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { takeFirstFocus } from '../../components/first-focus.ts';
import { Page } from '../../components/Page.tsx';
import { PapersOutOfDate } from '../../components/PrintedPapers.tsx';
import { goTo } from '../../components/routes.ts';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useWords } from '../../components/words.ts';
import { InspectorPages } from './InspectorPages.tsx';
import { KeyCard } from './KeyCard.tsx';
import { LabelPreview } from './LabelPreview.tsx';
import { OwnSheets } from './OwnSheets.tsx';
import { PlainLabels } from './PlainLabels.tsx';
import { Printers } from './Printers.tsx';
import { SheetPicture } from './SheetPicture.tsx';
import { YardSheet } from './YardSheet.tsx';

/**
 * Labels for the boxes of a batch: which sheet, from which label on, and what they show; below them all other papers.
 * @param toSheet the person came for the sheet of the walk.
 */
export function Labels({ batchId, toSheet }: { batchId: string | null; toSheet: boolean }) {
  const { print: words } = useWords();
  const [key, setKey] = useState<string>(LABEL_SHEETS[0].key);
  const setup = useAnswer(['print-setup'], () => ask.print.getPrintSetup.query());
  const sheets: readonly LabelSheet[] = [...LABEL_SHEETS, ...(setup.data?.sheets ?? [])];
  const sheet = sheets.find((one) => one.key === key) ?? LABEL_SHEETS[0];
  const offer = useAnswer(['labels', batchId, sheet.key], () =>
    ask.print.offerLabels.query({ batchId, sheet: sheet.key }),
  );
  if (!offer.data || !setup.data) return <Page title={words.title}>{null}</Page>;
  const chosen = batchId ?? offer.data.batches[0]?.id ?? null;
  return (
    <Page title={words.title}>
      <Section title={words.labels}>
        {offer.data.batches.length === 0 || chosen === null ? (
          <EmptyState title={words.empty} />
        ) : (
          <LabelForm
            key={`${chosen} ${sheet.key} ${offer.isPlaceholderData}`}
            offer={offer.data}
            batchId={chosen}
            sheet={sheet}
            sheets={sheets}
            printers={setup.data.printers}
            setSheet={setKey}
          />
        )}
      </Section>
      <PlainLabels sheet={sheet} sheets={sheets} printers={setup.data.printers} setSheet={setKey} />
      <PapersOutOfDate />
      <YardSheet focus={toSheet} />
      <KeyCard />
      <InspectorPages />
      <OwnSheets sheets={setup.data.sheets} />
      <Printers printers={setup.data.printers} sheet={sheet.key} />
    </Page>
  );
}

interface LabelFormProps {
  readonly offer: LabelOffer;
  readonly batchId: string;
  readonly sheet: LabelSheet;
  readonly sheets: readonly LabelSheet[];
  readonly printers: PrintSetup['printers'];
  readonly setSheet: (key: string) => void;
}

function LabelForm(props: LabelFormProps) {
  const { offer, batchId, sheet, printers } = props;
  const { print: words, calibration } = useWords();
  const [printer, setPrinter] = useState(printers.at(-1)?.name ?? '');
  const [startAt, setStartAt] = useState(String(offer.startAt));
  const [shows, setShows] = useState({ qr: false, pencilLine: true, outline: false });
  const [outcome, setOutcome] = useState<string | null>(null);
  const print = useChange(ask.print.printLabels.mutate);
  const problem = useProblemOf(print.state.refusal);
  const wish = { batchId, sheet: sheet.key, qr: shows.qr, pencilLine: shows.pencilLine };
  const picture = useAnswer(['label-picture', wish], () => ask.print.previewLabel.query(wish));
  const first = /^\d{1,3}$/.test(startAt.trim()) ? Number(startAt) : 0;
  const waiting = offer.waiting.length;
  const [onlyWaiting, setOnlyWaiting] = useState(waiting > 0 && waiting < offer.labels.length);
  const only = onlyWaiting && waiting > 0;
  const labels = only ? waiting : offer.labels.length;
  const boxIds = only ? offer.waiting.map(({ boxId }) => boxId) : null;
  const choice: LabelChoice = { batchId, boxIds, sheet: sheet.key, startAt: first, printer: printer || null, ...shows };
  const make = async (then: (file: PrintedFile) => Promise<string | null>) => {
    const file = await print.run(choice);
    if (!file) return;
    setStartAt(String(file.nextStartAt));
    setOutcome((await then(file)) ?? words.ready(labels, file.pages));
  };
  return (
    <div className="columns">
      <div className="stack">
        <WhatAndSheet {...props} problem={problem('batchId')} />
        <TextField
          label={words.startAt}
          value={startAt}
          onChange={setStartAt}
          numeric
          hint={words.startHint}
          problem={problem('startAt')}
        />
        <ChoiceField
          label={words.which}
          value={only ? 'waiting' : 'all'}
          choices={[
            { value: 'all' as const, text: words.allLabels(offer.labels.length) },
            ...(waiting > 0 ? [{ value: 'waiting' as const, text: words.waitingLabels(waiting) }] : []),
          ]}
          onChange={(which) => setOnlyWaiting(which === 'waiting')}
        />
        {printers.length > 0 ? (
          <ChoiceField
            label={calibration.printer}
            value={printer}
            choices={[
              { value: '', text: calibration.notMeasured },
              ...printers.map(({ name }) => ({ value: name, text: name })),
            ]}
            onChange={setPrinter}
          />
        ) : null}
        <ChangedLabels waiting={offer.waiting} />
        <Shows shows={shows} setShows={setShows} problem={problem('qr')} />
        <PrintActs busy={print.state.busy} make={(then) => void make(then)} />
        {outcome ? (
          <p className="line-good" role="status">
            {outcome}
          </p>
        ) : null}
        <ChangeLines {...print.state} ownFields={['batchId', 'startAt', 'qr']} />
        <p className="soft">{words.advice}</p>
      </div>
      <div className="stack">
        <SheetPicture sheet={sheet} startAt={first} labels={labels} onChoose={(n) => setStartAt(String(n))} />
        <LabelPreview look={picture.data ?? null} sheet={sheet} />
      </div>
    </div>
  );
}

interface PrintActsProps {
  readonly busy: boolean;
  readonly make: (then: (file: PrintedFile) => Promise<string | null>) => void;
}

function PrintActs({ busy, make }: PrintActsProps) {
  const { print: words } = useWords();
  return (
    <div className="acts">
      <Button
        ref={takeFirstFocus}
        variant="contained"
        disabled={busy}
        onClick={() => make((file) => saveMade(file, words))}
      >
        {words.save}
      </Button>
      {shell.kind === 'loopback' ? (
        <Button variant="outlined" disabled={busy} onClick={() => make(openPdf)}>
          {words.open}
        </Button>
      ) : null}
    </div>
  );
}

function WhatAndSheet({
  offer,
  batchId,
  sheet,
  sheets,
  setSheet,
  problem,
}: LabelFormProps & { readonly problem: string | null }) {
  const { print: words } = useWords();
  return (
    <>
      <ChoiceField
        label={words.what}
        value={batchId}
        choices={offer.batches.map((batch) => ({
          value: batch.id,
          text: `${words.batch(batch.code, batch.boxes)}, ${words.unprinted(batch.unprinted)}`,
        }))}
        onChange={(id) => goTo(`/print?batch=${id}`)}
        problem={problem}
      />
      <ChoiceField
        label={words.sheet}
        value={sheet.key}
        choices={sheets.map((one) => ({ value: one.key, text: words.sheetName(one) }))}
        onChange={setSheet}
      />
    </>
  );
}

/** What is printed already and no longer right; boxes with the same changes in one line. */
function ChangedLabels({ waiting }: { waiting: LabelOffer['waiting'] }) {
  const { print: words } = useWords();
  const changed = waiting.filter(({ printedOn }) => printedOn !== null);
  if (changed.length === 0) return null;
  const textOf = ({ changes }: WaitingLabel) =>
    changes.map(({ part, was, now }) => words.changedPart(words.parts[part], was, now)).join(', ');
  return (
    <div className="line-notice" role="status">
      {words.changed(changed.length)}
      <ul>
        {[...Map.groupBy(changed, textOf)].map(([text, boxes]) => (
          <li key={text}>{words.changedLine(shortCodes(boxes.map(({ box }) => box)), text)}</li>
        ))}
      </ul>
    </div>
  );
}

interface ShowsProps {
  readonly shows: { readonly qr: boolean; readonly pencilLine: boolean; readonly outline: boolean };
  readonly setShows: (shows: ShowsProps['shows']) => void;
  readonly problem: string | null;
}

function Shows({ shows, setShows, problem }: ShowsProps) {
  const { print: words } = useWords();
  return (
    <fieldset>
      <legend>{words.shows}</legend>
      {(['pencilLine', 'qr', 'outline'] as const).map((key) => (
        <label key={key} className="check" style={{ minHeight: 34 }}>
          <input
            type="checkbox"
            checked={shows[key]}
            onChange={(event) => setShows({ ...shows, [key]: event.target.checked })}
          />
          {words[key]}
        </label>
      ))}
      {problem ? (
        <p className="line-problem" role="alert">
          {problem}
        </p>
      ) : null}
    </fieldset>
  );
}
