import { Button } from '@mui/material';
import { useState } from 'react';
import type { WorkbookState } from '../../shared/contract/workbook.ts';
import { ask } from '../client/client.ts';
import { useOtherWorkbook } from '../client/hooks.ts';
import { ChangeLines } from '../components/ChangeLines.tsx';
import { useMoment } from '../components/moments.ts';
import { goTo } from '../components/routes.ts';
import { useWords } from '../components/words.ts';
import { SaveElsewhere } from './SaveElsewhere.tsx';

type Open = NonNullable<WorkbookState['open']>;

/** A safety copy that is looked into, a file that is read only or harmed, a risky place: the gravest only. */
export function RareStrip({ open }: { open: Open }) {
  if (open.lookingAt) return <CopyStrip at={open.lookingAt.at} />;
  if (open.readOnlyBecause === 'open-elsewhere') return <ElsewhereStrip file={open.file} />;
  if (open.readOnlyBecause) return <ReadOnlyStrip because={open.readOnlyBecause} />;
  if (open.harm) return <HarmStrip harm={open.harm} />;
  return open.riskyPlace ? <RiskyStrip key={open.file} file={open.file} place={open.riskyPlace} /> : null;
}

function CopyStrip({ at }: { at: string }) {
  const { copies: words } = useWords();
  const moment = useMoment();
  const leave = useOtherWorkbook(() => ask.copies.leaveCopy.mutate());
  return (
    <aside className="strip" aria-label={words.title}>
      <span>{words.strip(moment(at))}</span>
      <Button variant="outlined" size="small" onClick={() => void leave.run(undefined)}>
        {words.leave}
      </Button>
    </aside>
  );
}

function HarmStrip({ harm }: { harm: NonNullable<Open['harm']> }) {
  const { copies: words } = useWords();
  const moment = useMoment();
  return (
    <aside className="alarm" aria-label={words.title}>
      <p className="line-problem" role="alert">
        {words.harm[harm.kind](harm.copyAt === null ? null : moment(harm.copyAt))}
      </p>
      <Button variant="outlined" size="small" onClick={() => goTo('/settings')}>
        {words.harm.see}
      </Button>
    </aside>
  );
}

function ReadOnlyStrip({ because }: { because: NonNullable<Open['readOnlyBecause']> }) {
  const { copies: words, frame } = useWords();
  return (
    <aside className="strip" aria-label={frame.readOnly}>
      <span style={{ maxWidth: '90ch' }}>{words.readOnly[because]}</span>
      {because === 'newer' ? null : <SaveElsewhere />}
    </aside>
  );
}

/** Another program writes in it: one looks again at what it has saved since, or takes it over once it is closed there. */
function ElsewhereStrip({ file }: { file: string }) {
  const { copies: words, frame } = useWords();
  const look = useOtherWorkbook(ask.workbook.lookAtWorkbook.mutate);
  const write = useOtherWorkbook(ask.workbook.openWorkbook.mutate);
  return (
    <aside className="strip" aria-label={frame.readOnly}>
      <span style={{ maxWidth: '90ch' }}>
        {words.readOnly['open-elsewhere']}
        <ChangeLines {...(write.state.refusal ? write.state : look.state)} />
      </span>
      <Button variant="outlined" size="small" onClick={() => void look.run({ file })}>
        {words.lookAgain}
      </Button>
      <Button variant="outlined" size="small" onClick={() => void write.run({ file })}>
        {words.openToWrite}
      </Button>
    </aside>
  );
}

/** Said once per workbook and computer, as far as the browser keeps what it is told. */
function RiskyStrip({ file, place }: { file: string; place: NonNullable<Open['riskyPlace']> }) {
  const { copies: words, settings } = useWords();
  const key = `understood:${place.kind}:${file}`;
  const [understood, setUnderstood] = useState(() => window.localStorage.getItem(key) !== null);
  if (understood) return null;
  const keep = () => {
    window.localStorage.setItem(key, 'yes');
    setUnderstood(true);
  };
  return (
    <aside className="strip" aria-label={settings.workbook}>
      <span style={{ maxWidth: '90ch' }}>{words.risky(place)}</span>
      <Button variant="outlined" size="small" onClick={keep}>
        {words.understood}
      </Button>
    </aside>
  );
}
