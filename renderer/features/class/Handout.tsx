import { Button } from '@mui/material';
import { useState } from 'react';
import type { PaperFile } from '../../../shared/contract/print.ts';
import { ask, shell } from '../../client/client.ts';
import { useChange } from '../../client/hooks.ts';
import { openPdf, saveMade } from '../../client/made-files.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { useWords } from '../../components/words.ts';

type Wish = Parameters<typeof ask.print.printTimetable.mutate>[0];

/** The timetable on paper: with dates, for any year, or with gaps to fill in. */
export function Handout({ chosen }: { chosen: Omit<Wish, 'variant' | 'paper'> }) {
  const { handout, print: words, yardSheet } = useWords();
  const [variant, setVariant] = useState<Wish['variant']>('dates');
  const [paper, setPaper] = useState<Wish['paper']>('a4');
  const [outcome, setOutcome] = useState<string | null>(null);
  const print = useChange(ask.print.printTimetable.mutate);
  const make = async (then: (file: PaperFile) => Promise<string | null>) => {
    const file = await print.run({ ...chosen, variant, paper });
    if (file) setOutcome((await then(file)) ?? words.pages(file.pages));
  };
  return (
    <div className="stack" style={{ marginBottom: 18 }}>
      <div className="row acts">
        <ChoiceField
          label={handout.variant}
          value={variant}
          choices={(['dates', 'day-numbers', 'gaps'] as const).map((value) => ({
            value,
            text: handout.variants[value],
          }))}
          onChange={setVariant}
        />
        <ChoiceField
          label={yardSheet.paper}
          value={paper}
          choices={(['a4', 'letter'] as const).map((value) => ({ value, text: yardSheet.papers[value] }))}
          onChange={setPaper}
        />
        <Button
          variant="contained"
          disabled={print.state.busy}
          onClick={() => void make((file) => saveMade(file, words))}
        >
          {handout.save}
        </Button>
        {shell.kind === 'loopback' ? (
          <Button variant="outlined" disabled={print.state.busy} onClick={() => void make(openPdf)}>
            {words.open}
          </Button>
        ) : null}
      </div>
      {outcome ? (
        <p className="line-good" role="status">
          {outcome}
        </p>
      ) : null}
      <ChangeLines {...print.state} ownFields={[]} />
    </div>
  );
}
