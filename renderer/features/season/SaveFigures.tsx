import { Button } from '@mui/material';
import { useState } from 'react';
import { ask } from '../../client/client.ts';
import { useChange } from '../../client/hooks.ts';
import { saveMade } from '../../client/made-files.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { useWords } from '../../components/words.ts';
import type { Asked } from './weighed.ts';

/** Spreadsheets of places that write 1,5 take semicolons between fields. */
const separator = () => (new Intl.NumberFormat().format(1.5).includes(',') ? 'semicolon' : 'comma');

/** The figures of the comparison as a table for a spreadsheet. */
export function SaveFigures({ asked }: { asked: Asked }) {
  const { season: words } = useWords();
  const made = useChange(ask.season.exportFigures.mutate);
  const [outcome, setOutcome] = useState<string | null>(null);
  const { allowingFor: _beside, ahead: _later, ...plain } = asked;
  const save = async () => {
    setOutcome(null);
    const file = await made.run({ ...plain, separator: separator() });
    if (file) setOutcome(await saveMade(file, words.savedWords));
  };
  return (
    <div className="acts" style={{ marginTop: 8 }}>
      <Button size="small" variant="outlined" disabled={made.state.busy} onClick={() => void save()}>
        {words.saveFigures}
      </Button>
      {outcome ? <span role="status">{outcome}</span> : null}
      <ChangeLines refusal={made.state.refusal} notReached={made.state.notReached} />
    </div>
  );
}
