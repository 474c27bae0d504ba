import { Button } from '@mui/material';
import { useState } from 'react';
import type { MethodView } from '../../../shared/contract/methods.ts';
import { METHODS, type Method } from '../../../shared/model/method.ts';
import { ask } from '../../client/client.ts';
import { newId, useAnswer, useChange } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { DataTable } from '../../components/DataTable.tsx';
import { useFollowing } from '../../components/following.ts';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useSentences, useWords } from '../../components/words.ts';
import {
  differingSteps,
  isDayNumber,
  methodCopy,
  type TypedDays,
  type TypedStep,
  typedDays,
  WHICH,
} from './method-form.ts';

/** Built-in methods and the person's own copies of them. */
export function Methods() {
  const { methodEditor: words, methods } = useWords();
  const [chosen, setChosen] = useState<string>('larva-grafting');
  const method = METHODS.find((one) => one === chosen) ?? null;
  const input = {
    method: method ?? ('larva-grafting' as Method),
    comb: 'drawn' as const,
    copyId: method ? null : chosen,
  };
  const view = useAnswer(['method', chosen], () => ask.methods.getMethod.query(input));
  const copies = view.data?.copies ?? [];
  const choices = [
    ...METHODS.map((one) => ({ value: one as string, text: methods[one].name })),
    ...copies.map((copy) => ({ value: copy.id, text: words.copyOf(copy.name, methods[copy.origin].name) })),
  ];
  return (
    <Section title={words.title}>
      <p style={{ marginBottom: 12 }}>{words.line}</p>
      <div style={{ maxWidth: 420, marginBottom: 16 }}>
        <ChoiceField label={words.choose} value={chosen} choices={choices} onChange={setChosen} />
      </div>
      {view.data && !view.isPlaceholderData ? <MethodDays key={chosen} view={view.data} onSaved={setChosen} /> : null}
    </Section>
  );
}

function MethodDays({ view, onSaved }: { view: MethodView; onSaved: (copyId: string) => void }) {
  const { methodEditor: words, methods, frame } = useWords();
  const [typed, setTyped] = useFollowing(typedDays(view.steps));
  const [name, setName] = useFollowing(view.copy?.name ?? words.nameDefault(methods[view.method].name));
  const [id] = useState(() => view.copy?.id ?? newId());
  const save = useChange(ask.methods.saveMethodCopy.mutate);
  const problem = useProblemOf(save.state.refusal);
  const copy = methodCopy(view, typed, name, id);
  const submit = async () => {
    if (copy && (await save.run(copy))) onSaved(copy.id);
  };
  return (
    <form
      className="stack prints"
      onSubmit={(event) => {
        event.preventDefault();
        void submit();
      }}
    >
      <p className="soft small">{words.days}</p>
      <DaysTable view={view} typed={typed} setTyped={setTyped} />
      {view.copy ? <Differences view={view} /> : null}
      <div style={{ maxWidth: 420 }}>
        <TextField label={words.name} value={name} onChange={setName} problem={problem('name')} required />
      </div>
      <div className="acts">
        <Button type="submit" variant="outlined" disabled={save.state.busy || !copy || name.trim() === ''}>
          {view.copy ? words.saveChanges : words.save}
        </Button>
        {view.copy && !save.state.refusal ? <span className="soft">{words.saved}</span> : null}
        {save.state.done ? (
          <span className="line-good" role="status">
            {frame.saved}
          </span>
        ) : null}
      </div>
      <ChangeLines {...save.state} ownFields={['name']} />
    </form>
  );
}

interface DaysTableProps {
  readonly view: MethodView;
  readonly typed: TypedDays;
  readonly setTyped: (typed: TypedDays) => void;
}

/** Each step with its days as built in and, to be typed over, those of the copy. */
function DaysTable({ view, typed, setTyped }: DaysTableProps) {
  const say = useSentences();
  const { methodEditor: words } = useWords();
  return (
    <DataTable
      caption={words.title}
      rows={view.steps}
      rowKey={(row) => row.step}
      columns={[
        {
          key: 'step',
          title: words.columns.step,
          head: true,
          cell: (row) => (
            <StepNames
              builtIn={say.step(row.step, view.method, 'queenless')}
              source={row.source}
              typed={typed[row.step]}
              onType={(own) => setTyped({ ...typed, [row.step]: own })}
            />
          ),
        },
        {
          key: 'builtIn',
          title: words.columns.builtIn,
          cell: ({ builtIn }) => (
            <span className="soft nowrap">{words.window(builtIn.earliest, builtIn.expected, builtIn.latest)}</span>
          ),
        },
        ...WHICH.map((which) => ({
          key: which,
          title: words.columns[which],
          cell: (row: MethodView['steps'][number]) => (
            <input
              className="control"
              style={{ width: '4.2rem' }}
              inputMode="numeric"
              aria-label={words.day(say.step(row.step, view.method, 'queenless'), words.columns[which])}
              aria-invalid={isDayNumber(typed[row.step]?.[which] ?? '') ? undefined : true}
              value={typed[row.step]?.[which] ?? ''}
              onChange={(event) => {
                const days = typed[row.step];
                if (days) setTyped({ ...typed, [row.step]: { ...days, [which]: event.target.value } });
              }}
            />
          ),
        })),
      ]}
    />
  );
}

interface StepNamesProps {
  readonly builtIn: string;
  readonly source: string;
  readonly typed: TypedStep | undefined;
  readonly onType: (typed: TypedStep) => void;
}

/** A step by its name; opened, the person's own name for it and a note. */
function StepNames({ builtIn, source, typed, onType }: StepNamesProps) {
  const { methodEditor: words, batches, sources } = useWords();
  const [open, setOpen] = useState(false);
  if (!typed) return <>{builtIn}</>;
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{typed.title.trim() || builtIn}</summary>
      {open ? (
        <div className="stack" style={{ minWidth: 240, paddingBlock: 8 }}>
          <TextField
            label={words.ownTitle(builtIn)}
            value={typed.title}
            onChange={(title) => onType({ ...typed, title })}
          />
          <TextField
            label={words.ownNote(builtIn)}
            value={typed.note}
            onChange={(note) => onType({ ...typed, note })}
            multiline
          />
          <p className="soft small">
            {batches.one.source}: {sources.told(source)}
          </p>
        </div>
      ) : null}
    </details>
  );
}

/** What of a copy is not as in the method it was copied from. */
function Differences({ view }: { view: MethodView }) {
  const say = useSentences();
  const { methodEditor: words, methods } = useWords();
  const steps = differingSteps(view.steps);
  return (
    <Section title={words.differences(methods[view.method].name)} level={3}>
      {steps.length === 0 ? (
        <p className="soft">{words.noDifference}</p>
      ) : (
        <ul>
          {steps.map(({ step, builtIn, own, changed, words: given }) => (
            <li key={step}>
              <strong>{say.step(step, view.method, 'queenless')}</strong>:{' '}
              {[
                changed
                  ? words.otherDays(
                      words.window(builtIn.earliest, builtIn.expected, builtIn.latest),
                      words.window(own.earliest, own.expected, own.latest),
                    )
                  : null,
                given.title === null ? null : words.otherName(given.title),
                given.note === null ? null : words.addedNote(given.note),
              ]
                .filter(Boolean)
                .join('; ')}
            </li>
          ))}
        </ul>
      )}
    </Section>
  );
}
