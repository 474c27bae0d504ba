import { Button } from '@mui/material';
import { useState } from 'react';
import { BAR, CROSS, type Printer, type PrinterReadings } from '../../../shared/model/printer.ts';
import { ask } from '../../client/client.ts';
import { useChange } from '../../client/hooks.ts';
import { usePaper } from '../../client/use-paper.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { PaperActs } from '../../components/PaperActs.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useDays, useWords } from '../../components/words.ts';
import { typedMillimetres } from './millimetres.ts';

const FIELDS = ['crossFromLeft', 'crossFromTop', 'barAcross', 'barDown'] as const;
const AS_DRAWN = {
  crossFromLeft: String(CROSS),
  crossFromTop: String(CROSS),
  barAcross: String(BAR),
  barDown: String(BAR),
};

/** What was measured on each printer, and a page to measure one more. */
export function Printers({ printers, sheet }: { printers: readonly Printer[]; sheet: string }) {
  const { calibration: words, print, yardSheet } = useWords();
  const [large, setLarge] = useState(false);
  const page = usePaper(ask.print.printCalibration.mutate, print);
  return (
    <details className="section">
      <summary>{words.section}</summary>
      <p className="soft">{words.explain}</p>
      {printers.map((printer) => (
        <MeasuredPrinter
          key={printer.name}
          printer={printer}
          check={() => page.save({ sheet, printer: printer.name, large })}
        />
      ))}
      <label className="check" style={{ minHeight: 40 }}>
        <input type="checkbox" checked={large} onChange={(event) => setLarge(event.target.checked)} />
        {yardSheet.large}
      </label>
      <PaperActs save={words.page} paper={page} input={{ sheet, printer: null, large }} />
      <ReadingsForm />
    </details>
  );
}

function MeasuredPrinter({ printer, check }: { printer: Printer; check: () => void }) {
  const { calibration: words } = useWords();
  const days = useDays();
  const remove = useChange(ask.print.removePrinter.mutate);
  return (
    <div style={{ margin: '10px 0' }}>
      <p>
        <strong>{printer.name}</strong>: {words.shift(printer.shiftX, printer.shiftY)};{' '}
        {words.stretch(printer.stretchX, printer.stretchY)}; {words.measured(days.short(printer.measuredOn))}.
      </p>
      <div className="acts">
        <Button size="small" variant="outlined" aria-label={`${words.check}, ${printer.name}`} onClick={check}>
          {words.check}
        </Button>
        <Button
          size="small"
          variant="outlined"
          aria-label={`${words.remove}, ${printer.name}`}
          onClick={() => void remove.run({ name: printer.name })}
        >
          {words.remove}
        </Button>
      </div>
      <ChangeLines {...remove.state} />
    </div>
  );
}

function ReadingsForm() {
  const { calibration: words } = useWords();
  const [name, setName] = useState('');
  const [typed, setTyped] = useState<Record<(typeof FIELDS)[number], string>>(AS_DRAWN);
  const save = useChange(ask.print.savePrinter.mutate);
  const problem = useProblemOf(save.state.refusal);
  const read = Object.fromEntries(FIELDS.map((field) => [field, typedMillimetres(typed[field])]));
  const keep = async () => {
    if (FIELDS.some((field) => read[field] === null)) return;
    if (await save.run({ name, ...(read as unknown as PrinterReadings) })) {
      setName('');
      setTyped(AS_DRAWN);
    }
  };
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <h3 style={{ marginTop: 16 }}>{words.add}</h3>
      <TextField label={words.name} value={name} onChange={setName} hint={words.nameHint} problem={problem('name')} />
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
      </div>
      <ChangeLines {...save.state} ownFields={['name', ...FIELDS]} />
    </form>
  );
}
