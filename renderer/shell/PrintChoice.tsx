import { Button, Dialog } from '@mui/material';
import { useState } from 'react';
import { addDays, dayOfIso, type IsoDay, isoOfDay } from '../../shared/kernel/day.ts';
import { ask, shell } from '../client/client.ts';
import { useChange } from '../client/hooks.ts';
import { openPdf, saveMade } from '../client/made-files.ts';
import { ChangeLines } from '../components/ChangeLines.tsx';
import { useToday, useWords } from '../components/words.ts';

/** What can be printed from Today: the sheet to carry out, for tomorrow first, or the view itself. */
export function PrintChoice({ onClose }: { onClose: () => void }) {
  const { frame, print: printWords } = useWords();
  const words = frame.printing;
  const today = useToday();
  const [made, setMade] = useState<string | null>(null);
  const print = useChange(ask.print.printYardSheet.mutate);
  const sheet = async (walkOn: IsoDay) => {
    const file = await print.run({ yardId: null, walkOn, paper: 'a4', large: false });
    if (!file) return;
    const said = await (shell.kind === 'loopback' ? openPdf(file) : saveMade(file, printWords));
    setMade(said ?? words.made(file.pages));
  };
  const view = () => {
    onClose();
    // The dialog must be gone before the page is drawn on paper.
    requestAnimationFrame(() => requestAnimationFrame(() => window.print()));
  };
  const tomorrow = isoOfDay(addDays(dayOfIso(today), 1));
  return (
    <Dialog open onClose={onClose} aria-label={words.title} className="no-print">
      <div className="stack" style={{ padding: 18 }}>
        <h2>{words.title}</h2>
        <Button autoFocus variant="contained" disabled={print.state.busy} onClick={() => void sheet(tomorrow)}>
          {words.tomorrow}
        </Button>
        <Button variant="outlined" disabled={print.state.busy} onClick={() => void sheet(today)}>
          {words.today}
        </Button>
        <Button variant="outlined" onClick={view}>
          {words.view}
        </Button>
        {made ? (
          <p className="line-good" role="status">
            {made}
          </p>
        ) : null}
        <ChangeLines {...print.state} />
        <Button onClick={onClose}>{frame.close}</Button>
      </div>
    </Dialog>
  );
}
