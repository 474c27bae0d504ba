import { Button } from '@mui/material';
import { useState } from 'react';
import { ask } from '../../client/client.ts';
import { useOtherWorkbook } from '../../client/hooks.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { Section } from '../../components/Section.tsx';
import { useWords } from '../../components/words.ts';

/** Invented data to practise with, in a file of its own: opened here, and set back to its start. */
export function PracticeWorkbook({ isOpen }: { isOpen: boolean }) {
  const { practice: words } = useWords();
  return (
    <div className="no-print">
      <Section title={words.title}>{isOpen ? <Reset /> : <Open />}</Section>
    </div>
  );
}

function Open() {
  const { practice: words } = useWords();
  const open = useOtherWorkbook(() => ask.workbook.openPractice.mutate());
  return (
    <>
      <p style={{ maxWidth: '70ch', marginBottom: 12 }}>{words.line}</p>
      <div className="acts">
        <Button variant="outlined" disabled={open.state.busy} onClick={() => void open.run(undefined)}>
          {words.open}
        </Button>
      </div>
      <ChangeLines {...open.state} />
    </>
  );
}

function Reset() {
  const { practice: words, frame } = useWords();
  const [asking, setAsking] = useState(false);
  const reset = useOtherWorkbook(() => ask.workbook.resetPractice.mutate());
  const setBack = async () => {
    if (await reset.run(undefined)) setAsking(false);
  };
  return (
    <>
      <p style={{ maxWidth: '70ch', marginBottom: 12 }}>{asking ? words.whatGoes : words.here}</p>
      <div className="acts">
        {asking ? (
          <>
            <Button variant="contained" disabled={reset.state.busy} onClick={() => void setBack()}>
              {words.reset}
            </Button>
            <Button variant="outlined" autoFocus onClick={() => setAsking(false)}>
              {frame.cancel}
            </Button>
          </>
        ) : (
          <Button variant="outlined" onClick={() => setAsking(true)}>
            {words.askReset}
          </Button>
        )}
      </div>
      {reset.state.done && !asking ? (
        <p className="line-good" role="status">
          {words.isReset}
        </p>
      ) : null}
      <ChangeLines {...reset.state} />
    </>
  );
}
