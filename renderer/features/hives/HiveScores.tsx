import { Button } from '@mui/material';
import { type FormEvent, useState } from 'react';
import { TRAIT_ROWS } from '../../../shared/biology/stock-traits.ts';
import type { HiveRecords } from '../../../shared/contract/stock.ts';
import { STOCK_TRAITS, type StockTrait } from '../../../shared/model/stock.ts';
import { ask } from '../../client/client.ts';
import { useDraft } from '../../client/drafts.ts';
import { newId, useChange } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { DataTable } from '../../components/DataTable.tsx';
import { DayField } from '../../components/DayField.tsx';
import { FoundDraft } from '../../components/FoundDraft.tsx';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useDays, useToday, useWords } from '../../components/words.ts';
import { TraitValue } from './TraitValue.tsx';

/** Scores on the open scales of four steps: the figure, the number behind it, and each score. */
export function HiveScores({ colonyId, records }: { colonyId: string; records: HiveRecords }) {
  const { stock } = useWords();
  const words = stock.scores;
  const days = useDays();
  const last = (trait: StockTrait) =>
    records.scores
      .filter((one) => one.trait === trait)
      .slice(0, 4)
      .map((one) => words.given(one.score, [days.dated(one.scoredOn), one.note].filter(Boolean).join(', ')))
      .join(', ');
  return (
    <Section title={words.title}>
      {records.scores.length === 0 ? (
        <p className="soft">{words.none}</p>
      ) : (
        <DataTable
          caption={words.title}
          rows={STOCK_TRAITS.map((trait) => ({ trait, figure: records.summary[trait] }))}
          rowKey={({ trait }) => trait}
          columns={[
            { key: 'trait', title: words.columns.trait, head: true, cell: ({ trait }) => stock.traits[trait].name },
            {
              key: 'value',
              title: words.columns.value,
              cell: ({ trait, figure }) => <TraitValue figure={figure} fewest={TRAIT_ROWS[trait].fewest} />,
            },
            { key: 'last', title: words.columns.last, cell: ({ trait }) => last(trait) },
          ]}
        />
      )}
      <details>
        <summary>{words.add}</summary>
        <ScoreForm colonyId={colonyId} />
      </details>
    </Section>
  );
}

/** Half points may be given; they stand between two steps and have no words of their own. */
const SCORES = [4, 3.5, 3, 2.5, 2, 1.5, 1] as const;

function ScoreForm({ colonyId }: { colonyId: string }) {
  const { stock } = useWords();
  const words = stock.scores;
  const today = useToday();
  const [trait, setTrait] = useState<StockTrait>('gentleness');
  const [score, setScore] = useState('3');
  const [day, setDay] = useState<string | null>(today);
  const { value: note, set: setNote, found, forget: forgetNote } = useDraft(`score-note:${colonyId}`, '');
  const record = useChange(ask.hives.recordScore.mutate);
  const problem = useProblemOf(record.state.refusal);
  const text = (value: number) => {
    const step = stock.traits[trait].steps[4 - value];
    return step ? words.step(value, step) : words.between(value);
  };
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (day === null) return;
    const typed = { id: newId(), colonyId, trait, scoredOn: day, score: Number(score), note: note.trim() || null };
    if (await record.run(typed)) forgetNote();
  };
  return (
    <form className="stack prints" onSubmit={(event) => void submit(event)}>
      <div className="row">
        <ChoiceField
          label={words.trait}
          value={trait}
          choices={STOCK_TRAITS.map((value) => ({ value, text: stock.traits[value].name }))}
          onChange={setTrait}
        />
        <ChoiceField
          label={words.score}
          value={score}
          choices={SCORES.map((value) => ({ value: String(value), text: text(value) }))}
          onChange={setScore}
        />
      </div>
      <div className="row">
        <DayField label={words.day} value={day} onChange={setDay} problem={problem('scoredOn')} />
        <TextField label={words.note} value={note} onChange={setNote} problem={problem('note')} />
      </div>
      <div className="acts">
        <Button type="submit" variant="outlined" disabled={record.state.busy || day === null}>
          {words.add}
        </Button>
      </div>
      <FoundDraft found={found} />
      <ChangeLines {...record.state} ownFields={['scoredOn', 'note']} />
    </form>
  );
}
