import { Button } from '@mui/material';
import { type FormEvent, lazy, Suspense, useState } from 'react';
import type { Habits, WorkbookState } from '../../shared/contract/workbook.ts';
import { ask, shell } from '../client/client.ts';
import { useAskAgain, useOtherWorkbook } from '../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../components/ChangeLines.tsx';
import { ChoiceField } from '../components/ChoiceField.tsx';
import { Section } from '../components/Section.tsx';
import { TextField } from '../components/TextField.tsx';
import { useFirstWords, useWords } from '../components/words.ts';
import { guessHabits } from './guess-habits.ts';

const SafetyCopies = lazy(() =>
  import('../features/settings/SafetyCopies.tsx').then((m) => ({ default: m.SafetyCopies })),
);

/** Before any workbook is open: begin one, open one, look at the demo or practise. A missing one is named first. */
export function FirstStart({ state }: { state: WorkbookState }) {
  const { frame } = useFirstWords();
  const words = frame.firstStart;
  const demo = useOtherWorkbook(() => ask.workbook.openDemo.mutate());
  const practice = useOtherWorkbook(() => ask.workbook.openPractice.mutate());
  const hasTrouble = state.missing !== null || state.notOpened !== null;
  // Keyed, so that what was typed stays when trouble changes their order.
  const begin = <Begin key="begin" usualFolder={state.usualFolder} autoFocus={!hasTrouble} />;
  const open = <OpenOne key="open" recent={state.recent} prominent={state.missing !== null} />;
  const saved = (
    <Suspense key="copies" fallback={null}>
      <SafetyCopies atStart />
    </Suspense>
  );
  return (
    <main className="main" style={{ maxWidth: 760, margin: '0 auto', paddingTop: 56 }}>
      <p className="soft">{frame.product}</p>
      <h1 style={{ marginBottom: 14 }}>{words.title}</h1>
      <p style={{ marginBottom: 32 }}>{words.line}</p>
      {state.missing ? <MissingWorkbook missing={state.missing} /> : null}
      {state.notOpened ? <NotOpened {...state.notOpened} /> : null}
      {hasTrouble ? [open, saved, begin] : [begin, open]}
      <Section title={words.demo}>
        <div className="acts">
          <Button variant="outlined" onClick={() => void demo.run(undefined)} disabled={demo.state.busy}>
            {words.demo}
          </Button>
          <Button variant="outlined" onClick={() => void practice.run(undefined)} disabled={practice.state.busy}>
            {words.practice}
          </Button>
        </div>
        <ChangeLines {...(practice.state.refusal ? practice.state : demo.state)} />
      </Section>
    </main>
  );
}

function MissingWorkbook({ missing }: { missing: NonNullable<WorkbookState['missing']> }) {
  const { frame } = useFirstWords();
  return (
    <div className="section" role="alert">
      <p className="bad">
        <strong>{frame.firstStart.missing(missing.name, missing.file)}</strong>
      </p>
      <p>{frame.firstStart.missingRemedy}</p>
    </div>
  );
}

/** Why a workbook that is there could not be opened; the ways on stand below. */
function NotOpened({ name, file, refusal }: NonNullable<WorkbookState['notOpened']>) {
  const { copies } = useWords();
  const look = useOtherWorkbook(ask.workbook.lookAtWorkbook.mutate);
  return (
    <div className="section">
      <p className="bad">
        <strong>{copies.notOpened(name)}</strong>
      </p>
      <ChangeLines {...(look.state.refusal ? look.state : { refusal })} />
      {refusal.kind === 'workbook-open-elsewhere' ? (
        <Button variant="contained" onClick={() => void look.run({ file })} disabled={look.state.busy}>
          {copies.lookWithout}
        </Button>
      ) : null}
      <p>{copies.comeBack}</p>
    </div>
  );
}

function Begin({ usualFolder, autoFocus }: { usualFolder: string; autoFocus: boolean }) {
  const { frame } = useFirstWords();
  const words = frame.firstStart;
  const [name, setName] = useState(words.nameDefault(new Date().getFullYear()));
  const [folder, setFolder] = useState(usualFolder);
  const [habits, setHabits] = useState(() => guessHabits(navigator.language));
  const begin = useOtherWorkbook(ask.workbook.beginWorkbook.mutate);
  const problem = useProblemOf(begin.state.refusal);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    void begin.run({ name, folder: folder === usualFolder || folder === '' ? null : folder, habits });
  };
  return (
    <Section title={words.begin}>
      <form className="stack" onSubmit={submit}>
        <TextField
          label={words.name}
          value={name}
          onChange={setName}
          problem={problem('name')}
          required
          autoFocus={autoFocus}
        />
        <TextField label={words.place} value={folder} onChange={setFolder} problem={problem('folder')} />
        <HabitFields habits={habits} onChange={(changed) => setHabits({ ...habits, ...changed })} />
        <div className="acts">
          <Button type="submit" variant="contained" disabled={begin.state.busy}>
            {words.begin}
          </Button>
          <PickButton text={words.chooseFolder} pick={shell.pickFolder} picked={setFolder} />
        </div>
        <ChangeLines {...begin.state} ownFields={['name', 'folder']} />
      </form>
    </Section>
  );
}

/** As the computer has it, to be changed in place. */
function HabitFields({ habits, onChange }: { habits: Habits; onChange: (changed: Partial<Habits>) => void }) {
  const { frame, settings: words } = useFirstWords();
  const choicesOf = <Key extends string>(texts: Readonly<Record<Key, string>>) =>
    (Object.entries(texts) as [Key, string][]).map(([value, text]) => ({ value, text }));
  return (
    <>
      <div className="row">
        <ChoiceField
          label={words.dateOrder}
          value={habits.dateOrder}
          choices={choicesOf(words.orders)}
          onChange={(dateOrder) => onChange({ dateOrder })}
        />
        <ChoiceField
          label={words.weekStart}
          value={habits.weekStart}
          choices={choicesOf(words.weekStarts)}
          onChange={(weekStart) => onChange({ weekStart })}
        />
        <ChoiceField
          label={words.temperature}
          value={habits.temperature}
          choices={choicesOf(words.temperatures)}
          onChange={(temperature) => onChange({ temperature })}
        />
        <ChoiceField
          label={words.measures}
          value={habits.measures}
          choices={choicesOf(words.measuresOf)}
          onChange={(measures) => onChange({ measures })}
        />
      </div>
      <p className="soft small">{frame.firstStart.guessed}</p>
    </>
  );
}

function OpenOne({ recent, prominent }: { recent: WorkbookState['recent']; prominent: boolean }) {
  const { frame } = useFirstWords();
  const words = frame.firstStart;
  const [file, setFile] = useState('');
  const open = useOtherWorkbook(ask.workbook.openWorkbook.mutate);
  const problem = useProblemOf(open.state.refusal);
  const askAgain = useAskAgain();
  const openFile = async (path: string) => {
    // Why it could not be opened is part of the state, with the copies there are.
    if (!(await open.run({ file: path }))) askAgain('workbook', 'copies');
  };
  return (
    <Section title={prominent ? words.find : words.open}>
      <form
        className="stack"
        onSubmit={(event) => {
          event.preventDefault();
          void openFile(file);
        }}
      >
        <TextField label={words.file} value={file} onChange={setFile} hint={words.fileHint} problem={problem('file')} />
        <div className="acts">
          <Button type="submit" variant="outlined" disabled={open.state.busy || file.trim() === ''}>
            {words.open}
          </Button>
          <PickButton text={words.chooseFile} pick={shell.pickFile} picked={(path) => void openFile(path)} />
        </div>
        <ChangeLines {...open.state} ownFields={['file']} />
        {recent.length > 0 ? (
          <div>
            <h3>{words.recent}</h3>
            <ul>
              {recent.map((one) => (
                <li key={one.file}>
                  <Button size="small" disabled={!one.found} onClick={() => void openFile(one.file)}>
                    {one.name}
                  </Button>{' '}
                  <span className="soft small">
                    {one.file}
                    {one.found ? '' : `, ${words.notThere}`}
                  </span>
                </li>
              ))}
            </ul>
          </div>
        ) : null}
      </form>
    </Section>
  );
}

/** The system's own dialog, where there is one. */
function PickButton({
  text,
  pick,
  picked,
}: {
  text: string;
  pick: typeof shell.pickFile;
  picked: (path: string) => void;
}) {
  if (shell.kind === 'loopback') return null;
  const choose = async () => {
    const answer = await pick(text);
    if (answer.available && answer.path) picked(answer.path);
  };
  return (
    <Button variant="text" onClick={() => void choose()}>
      {text}
    </Button>
  );
}
