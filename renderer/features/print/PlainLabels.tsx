import { useState } from 'react';
import { PLAIN_LABEL_KINDS, type PlainLabelKind } from '../../../shared/contract/plain-labels.ts';
import type { PrintSetup } from '../../../shared/contract/print.ts';
import type { LabelSheet } from '../../../shared/model/label-sheet.ts';
import { ask } from '../../client/client.ts';
import { useAnswer, useAskAgain } from '../../client/hooks.ts';
import { usePaper } from '../../client/use-paper.ts';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { PaperActs } from '../../components/PaperActs.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useWords } from '../../components/words.ts';
import { LabelPreview } from './LabelPreview.tsx';

interface PlainLabelsProps {
  readonly sheet: LabelSheet;
  readonly sheets: readonly LabelSheet[];
  readonly printers: PrintSetup['printers'];
  readonly setSheet: (key: string) => void;
}

/** Labels for bars, cages and queens, on the same sheets as those for boxes. */
export function PlainLabels({ sheet, sheets, printers, setSheet }: PlainLabelsProps) {
  const { plainLabels: words, print } = useWords();
  const askAgain = useAskAgain();
  const [kind, setKind] = useState<PlainLabelKind>('bars');
  const [batchId, setBatchId] = useState<string | null>(null);
  const [qr, setQr] = useState(false);
  const [typed, setTyped] = useState<string | null>(null);
  const wish = { kind, batchId, sheet: sheet.key, qr };
  const offer = useAnswer(['plain-labels', wish], () => ask.print.previewPlainLabels.query(wish)).data;
  const paper = usePaper(async (input: Parameters<typeof ask.print.printPlainLabels.mutate>[0]) => {
    const made = await ask.print.printPlainLabels.mutate(input);
    if (made.ok) setTyped(null);
    askAgain('plain-labels', 'labels');
    return made;
  }, print);
  if (!offer) return null;
  const startAt = typed ?? String(offer.startAt);
  const printer = printers.at(-1)?.name ?? null;
  const input = { ...wish, batchId: offer.batchId, startAt: Number(startAt) || 0, outline: false, printer };
  return (
    <details className="section">
      <summary>{words.section}</summary>
      <div className="columns">
        <div className="stack">
          <ChoiceField
            label={words.what}
            value={kind}
            choices={PLAIN_LABEL_KINDS.map((value) => ({ value, text: words.kinds[value] }))}
            onChange={setKind}
          />
          {kind !== 'queens' && offer.batchId !== null ? (
            <ChoiceField
              label={words.batch}
              value={offer.batchId}
              choices={offer.batches.map(({ id, code }) => ({ value: id, text: code }))}
              onChange={setBatchId}
            />
          ) : null}
          <ChoiceField
            label={print.sheet}
            value={sheet.key}
            choices={sheets.map((one) => ({ value: one.key, text: print.sheetName(one) }))}
            onChange={setSheet}
          />
          <TextField label={print.startAt} value={startAt} onChange={setTyped} numeric />
          <label className="check" style={{ minHeight: 34 }}>
            <input type="checkbox" checked={qr} onChange={(event) => setQr(event.target.checked)} />
            {print.qr}
          </label>
          <p>{offer.labels.length === 0 ? words.none[kind] : words.count(offer.labels.length)}</p>
          <PaperActs
            save={words.save}
            paper={paper}
            input={input}
            nothing={offer.labels.length === 0}
            preview={false}
          />
          <p className="soft">{print.advice}</p>
        </div>
        <div className="stack">
          <LabelPreview look={offer.look} sheet={sheet} />
        </div>
      </div>
    </details>
  );
}
