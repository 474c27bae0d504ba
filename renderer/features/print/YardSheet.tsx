import { Button } from '@mui/material';
import { useState } from 'react';
import type { PaperFile } from '../../../shared/contract/print.ts';
import { ask, shell } from '../../client/client.ts';
import { useAnswer, useChange } from '../../client/hooks.ts';
import { openPdf, saveMade } from '../../client/made-files.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { Section } from '../../components/Section.tsx';
import { useWords } from '../../components/words.ts';

/** The sheet for a walk along the mating boxes, to be filled in by pencil. */
export function YardSheet() {
  const { print: words, yardSheet } = useWords();
  const hives = useAnswer(['hives'], () => ask.hives.listHives.query());
  const [yardId, setYardId] = useState('');
  const [paper, setPaper] = useState<'a4' | 'letter'>('a4');
  const [large, setLarge] = useState(false);
  const [outcome, setOutcome] = useState<string | null>(null);
  const print = useChange(ask.print.printYardSheet.mutate);
  const make = async (then: (file: PaperFile) => Promise<string | null>) => {
    const file = await print.run({ yardId: yardId || null, walkOn: null, paper, large });
    if (file) setOutcome((await then(file)) ?? words.pages(file.pages));
  };
  const yards = (hives.data?.yards ?? []).map((yard) => ({ value: yard.id, text: yard.name }));
  return (
    <Section title={yardSheet.title}>
      <p className="soft">{yardSheet.explain}</p>
      <div className="columns">
        <ChoiceField
          label={yardSheet.yard}
          value={yardId}
          choices={[{ value: '', text: yardSheet.allYards }, ...yards]}
          onChange={setYardId}
        />
        <ChoiceField
          label={yardSheet.paper}
          value={paper}
          choices={(['a4', 'letter'] as const).map((value) => ({ value, text: yardSheet.papers[value] }))}
          onChange={setPaper}
        />
      </div>
      <label className="check" style={{ minHeight: 40 }}>
        <input type="checkbox" checked={large} onChange={(event) => setLarge(event.target.checked)} />
        {yardSheet.large}
      </label>
      <div className="acts">
        <Button
          variant="contained"
          disabled={print.state.busy}
          onClick={() => void make((file) => saveMade(file, words))}
        >
          {yardSheet.save}
        </Button>
        {shell.kind === 'loopback' ? (
          <Button variant="outlined" disabled={print.state.busy} onClick={() => void make(openPdf)}>
            {yardSheet.open}
          </Button>
        ) : null}
      </div>
      {outcome ? (
        <p className="line-good" role="status">
          {outcome}
        </p>
      ) : null}
      <ChangeLines {...print.state} ownFields={[]} />
    </Section>
  );
}
