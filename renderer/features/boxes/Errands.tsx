import { Button } from '@mui/material';
import { useState } from 'react';
import type { ErrandLook, ErrandPreview, LookSeen } from '../../../shared/contract/errand.ts';
import { ask } from '../../client/client.ts';
import { type HandedFile, readHandedFile } from '../../client/handed-file.ts';
import { useChange, useResult } from '../../client/hooks.ts';
import { saveMade } from '../../client/made-files.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { DataTable } from '../../components/DataTable.tsx';
import { FileField } from '../../components/FileField.tsx';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useDays, useWords } from '../../components/words.ts';

/**
 * Boxes handed out to someone else's eyes, and their looks taken in.
 * @param handOut codes of boxes that were chosen for it, empty where none were, and how often they were.
 */
export function Errands({ handOut }: { handOut: { readonly codes: string; readonly times: number } }) {
  const { errand: words } = useWords();
  return (
    <Section title={words.title}>
      <p className="soft" style={{ marginBottom: 12 }}>
        {words.line}
      </p>
      <div className="columns">
        <HandOut key={handOut.times} codes={handOut.codes} />
        <TakeIn />
      </div>
    </Section>
  );
}

function HandOut({ codes }: { codes: string }) {
  const { errand: words } = useWords();
  const [boxes, setBoxes] = useState(codes);
  const [outcome, setOutcome] = useState<string | null>(null);
  const made = useChange(ask.boxes.makeErrand.mutate);
  const problem = useProblemOf(made.state.refusal);
  const save = async () => {
    setOutcome(null);
    const file = await made.run({ boxes });
    if (file) setOutcome(await saveMade(file, words));
  };
  return (
    <div className="stack">
      <TextField
        label={words.boxes}
        value={boxes}
        onChange={setBoxes}
        hint={words.boxesHint}
        problem={problem('boxes')}
        autoFocus={codes !== ''}
      />
      <div className="acts">
        <Button variant="outlined" disabled={boxes.trim() === '' || made.state.busy} onClick={() => void save()}>
          {words.make}
        </Button>
        {outcome ? <span role="status">{outcome}</span> : null}
      </div>
      <ChangeLines {...made.state} />
    </div>
  );
}

type Choices = Readonly<Record<string, 'mine' | 'theirs'>>;

function TakeIn() {
  const { errand: words } = useWords();
  const [file, setFile] = useState<HandedFile | null>(null);
  const [choices, setChoices] = useState<Choices>({});
  const [outcome, setOutcome] = useState<string | null>(null);
  const preview = useResult(
    ['errand', file?.chosen],
    () => (file ? ask.boxes.previewErrand.query({ file }) : Promise.resolve(null)),
    file !== null,
  );
  const take = useChange(ask.boxes.takeErrand.mutate);
  const choose = async (chosen: File) => {
    setOutcome(null);
    setChoices({});
    setFile(await readHandedFile(chosen));
  };
  const takeIn = async () => {
    const done = file && (await take.run({ file, choices }));
    if (!done) return;
    setOutcome(words.taken(done.added, done.changed));
    setFile(null);
  };
  return (
    <div className="stack">
      <FileField label={words.file} accept=".ripecell" onChange={(chosen) => void choose(chosen)} />
      {outcome ? (
        <p className="line-good" role="status">
          {outcome}
        </p>
      ) : null}
      <ChangeLines refusal={preview.refusal} notReached={preview.notReached} />
      {file && preview.value ? (
        <CameBack
          preview={preview.value}
          choices={choices}
          onChoose={(id, choice) => setChoices({ ...choices, [id]: choice })}
          busy={take.state.busy}
          onTake={() => void takeIn()}
        />
      ) : null}
      <ChangeLines {...take.state} />
    </div>
  );
}

interface CameBackProps {
  readonly preview: ErrandPreview;
  readonly choices: Choices;
  readonly onChoose: (lookId: string, choice: 'mine' | 'theirs') => void;
  readonly busy: boolean;
  readonly onTake: () => void;
}

function CameBack({ preview, choices, onChoose, busy, onTake }: CameBackProps) {
  const { errand: words } = useWords();
  const days = useDays();
  const seenText = useSeenText();
  const { looks } = preview;
  const coming = looks.filter(({ standing, lookId }) => standing === 'new' || choices[lookId] === 'theirs').length;
  const undecided = looks.some(({ standing, lookId }) => standing === 'doubtful' && !choices[lookId]);
  return (
    <>
      <p>{words.from(preview.from, days.short(preview.madeOn))}</p>
      {looks.length === 0 ? (
        <p>{words.nothingNew}</p>
      ) : (
        <>
          <DataTable
            caption={words.file}
            rows={looks}
            rowKey={(look) => look.lookId}
            columns={[
              { key: 'box', title: words.columns.box, head: true, cell: (look) => look.box },
              { key: 'on', title: words.columns.on, cell: (look) => days.short(look.on) },
              { key: 'theirs', title: words.columns.theirs, cell: (look) => seenText(look.theirs) },
              {
                key: 'mine',
                title: words.columns.mine,
                cell: (look) => (look.mine ? seenText(look.mine) : words.none),
              },
              {
                key: 'stands',
                title: words.columns.stands,
                cell: (look) => <Standing look={look} choice={choices[look.lookId]} onChoose={onChoose} />,
              },
            ]}
          />
          <div className="acts">
            <Button variant="contained" disabled={busy || undecided || coming === 0} onClick={onTake}>
              {words.take(coming)}
            </Button>
          </div>
        </>
      )}
    </>
  );
}

interface StandingProps {
  readonly look: ErrandLook;
  readonly choice: 'mine' | 'theirs' | undefined;
  readonly onChoose: CameBackProps['onChoose'];
}

function Standing({ look, choice, onChoose }: StandingProps) {
  const { errand: words } = useWords();
  const days = useDays();
  if (look.standing !== 'doubtful') return <>{words.standing[look.standing]}</>;
  const radio = (value: 'mine' | 'theirs', text: string) => (
    <label className="check">
      <input
        type="radio"
        name={`errand-${look.lookId}`}
        checked={choice === value}
        onChange={() => onChoose(look.lookId, value)}
      />
      {text}
    </label>
  );
  return (
    <fieldset>
      <legend className="visually-hidden">{words.chooseFor(look.box, days.short(look.on))}</legend>
      {choice === undefined ? <span className="line-notice">{words.standing.doubtful}</span> : null}
      {radio('theirs', words.theirs)}
      {radio('mine', words.keep)}
    </fieldset>
  );
}

function useSeenText(): (seen: LookSeen) => string {
  const { errand: words, looks } = useWords();
  return ({ result, strength, food, note, queen }) =>
    [
      looks[result].name,
      queen === null ? null : words.queen(queen),
      strength === null ? null : words.strength(strength),
      food === null ? null : words.food(food),
      note,
    ]
      .filter(Boolean)
      .join(', ');
}
