import { Button } from '@mui/material';
import { useState } from 'react';
import { LABEL_SHEETS, type LabelSheet } from '../../../shared/model/label-sheet.ts';
import type { OwnLabelSheet } from '../../../shared/model/own-label-sheet.ts';
import { ask } from '../../client/client.ts';
import { newId, useChange } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useWords } from '../../components/words.ts';
import { typedMillimetres } from './millimetres.ts';

const FIELDS = [
  'paperWidth',
  'paperHeight',
  'columns',
  'rows',
  'labelWidth',
  'labelHeight',
  'left',
  'top',
  'pitchX',
  'pitchY',
] as const;
type Typed = Record<(typeof FIELDS)[number], string>;

const typedFrom = (sheet: LabelSheet): Typed =>
  Object.fromEntries(FIELDS.map((field) => [field, String(sheet[field])])) as Typed;
/** What a new sheet begins from. */
const [USUAL] = LABEL_SHEETS;

/** Label sheets by the person's own measures, with a picture of what was typed. */
export function OwnSheets({ sheets }: { sheets: readonly OwnLabelSheet[] }) {
  const { ownSheets: words } = useWords();
  const [key, setKey] = useState('');
  const chosen = sheets.find((sheet) => sheet.key === key) ?? null;
  return (
    <details className="section">
      <summary>{words.section}</summary>
      <p className="soft">{words.explain}</p>
      {sheets.length > 0 ? (
        <ChoiceField
          label={words.choose}
          value={chosen?.key ?? ''}
          choices={[
            { value: '', text: words.another },
            ...sheets.map((sheet) => ({ value: sheet.key, text: sheet.name })),
          ]}
          onChange={setKey}
        />
      ) : null}
      <SheetForm key={chosen?.key ?? 'new'} sheet={chosen} />
    </details>
  );
}

function SheetForm({ sheet }: { sheet: OwnLabelSheet | null }) {
  const { ownSheets: words } = useWords();
  const [name, setName] = useState(sheet?.name ?? '');
  const [typed, setTyped] = useState(typedFrom(sheet ?? USUAL));
  const save = useChange(ask.print.saveLabelSheet.mutate);
  const remove = useChange(ask.print.removeLabelSheet.mutate);
  const problem = useProblemOf(save.state.refusal);
  const read = Object.fromEntries(FIELDS.map((field) => [field, typedMillimetres(typed[field])])) as Record<
    (typeof FIELDS)[number],
    number | null
  >;
  const whole = FIELDS.every((field) => read[field] !== null)
    ? ({ ...(read as Record<(typeof FIELDS)[number], number>), key: sheet?.key ?? 'own-new' } satisfies LabelSheet)
    : null;
  const keep = async () => {
    if (whole) await save.run({ ...whole, key: sheet?.key ?? `own-${newId()}`, name });
  };
  return (
    <div className="columns">
      <form
        className="stack"
        onSubmit={(event) => {
          event.preventDefault();
          void keep();
        }}
      >
        <TextField label={words.name} value={name} onChange={setName} problem={problem('name')} />
        <div className="columns">
          {FIELDS.map((field) => (
            <TextField
              key={field}
              label={words.fields[field]}
              value={typed[field]}
              onChange={(text) => setTyped({ ...typed, [field]: text })}
              problem={read[field] === null ? words.unclear : problem(field)}
            />
          ))}
        </div>
        <div className="acts">
          <Button type="submit" variant="outlined" disabled={save.state.busy}>
            {words.save}
          </Button>
          {sheet ? (
            <Button variant="outlined" onClick={() => void remove.run({ key: sheet.key })}>
              {words.remove}
            </Button>
          ) : null}
        </div>
        {save.state.done ? (
          <p className="line-good" role="status">
            {words.saved}
          </p>
        ) : null}
        <ChangeLines {...save.state} ownFields={['name', ...FIELDS]} />
        <ChangeLines {...remove.state} />
      </form>
      {whole && whole.columns <= 12 && whole.rows <= 40 ? <SheetOutline sheet={whole} /> : null}
    </div>
  );
}

/** The sheet to scale, as it was typed. */
function SheetOutline({ sheet }: { sheet: LabelSheet }) {
  const { print: words } = useWords();
  const { paperWidth, paperHeight, columns, rows, labelWidth, labelHeight, left, top, pitchX, pitchY } = sheet;
  const labels = Array.from({ length: columns * rows }, (_, index) => {
    const [x, y] = [left + (index % columns) * pitchX, top + Math.floor(index / columns) * pitchY];
    return `M${x} ${y}h${labelWidth}v${labelHeight}h${-labelWidth}z`;
  });
  return (
    <svg
      viewBox={`0 0 ${paperWidth} ${paperHeight}`}
      role="img"
      aria-label={words.sheetName(sheet)}
      style={{ maxHeight: 360, maxWidth: 280, background: 'var(--surface)', border: '1px solid var(--rule)' }}
    >
      <path d={labels.join('')} fill="none" stroke="var(--ink)" strokeWidth={0.6} />
    </svg>
  );
}
