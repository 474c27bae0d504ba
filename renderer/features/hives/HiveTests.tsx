import { Button } from '@mui/material';
import { type FormEvent, useState } from 'react';
import type { HiveRecords } from '../../../shared/contract/stock.ts';
import { STOCK_TESTS, type StockTestKind } from '../../../shared/model/stock.ts';
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
import { useDays, useToday, useWeights, useWords } from '../../components/words.ts';
import { amountTyped } from './typed-amount.ts';

/** Hygiene tests, counts of mites and weights of honey, each with what it was counted out of. */
export function HiveTests({ colonyId, records }: { colonyId: string; records: HiveRecords }) {
  const { stock } = useWords();
  const words = stock.testing;
  const days = useDays();
  const { measures } = useWeights();
  return (
    <Section title={words.title}>
      {records.tests.length === 0 ? (
        <p className="soft">{words.none}</p>
      ) : (
        <DataTable
          caption={words.title}
          rows={records.tests}
          rowKey={(test) => test.id}
          columns={[
            { key: 'day', title: words.columns.day, head: true, cell: (test) => days.dated(test.testedOn) },
            { key: 'kind', title: words.columns.kind, cell: (test) => stock.tests[test.kind].name },
            {
              key: 'figure',
              title: words.columns.figure,
              cell: (test) => (test.figure === null ? '' : stock.tests[test.kind].figure(test.figure, measures)),
            },
            {
              key: 'counted',
              title: words.columns.counted,
              cell: (test) =>
                [
                  test.outOf === null ? null : words.of(test.counted, test.outOf),
                  test.hours === null ? null : words.after(test.hours),
                  test.note,
                ]
                  .filter(Boolean)
                  .join(', '),
            },
          ]}
        />
      )}
      {records.strictlyHygienic === null ? null : (
        <p>{records.strictlyHygienic ? stock.hygienic : stock.notHygienic}</p>
      )}
      <details>
        <summary>{words.add}</summary>
        <TestForm colonyId={colonyId} />
      </details>
    </Section>
  );
}

function TestForm({ colonyId }: { colonyId: string }) {
  const { stock } = useWords();
  const words = stock.testing;
  const today = useToday();
  const weights = useWeights();
  const [kind, setKind] = useState<StockTestKind>('pin-test');
  const [day, setDay] = useState<string | null>(today);
  const [counted, setCounted] = useState('');
  const [outOf, setOutOf] = useState('50');
  const [hours, setHours] = useState('');
  const { value: note, set: setNote, found, forget: forgetNote } = useDraft(`test-note:${colonyId}`, '');
  const record = useChange(ask.hives.recordTest.mutate);
  const problem = useProblemOf(record.state.refusal);
  const { outOf: outOfWord } = stock.tests[kind];
  const isHoney = kind === 'honey';
  const countedWord = isHoney ? words.weight[weights.measures] : stock.tests[kind].counted;
  const ofCells = kind === 'pin-test' || kind === 'freeze-test';
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (day === null) return;
    const figures = {
      counted: isHoney ? weights.typed(amountTyped(counted) ?? Number.NaN) : (amountTyped(counted) ?? Number.NaN),
      outOf: outOfWord === null ? null : amountTyped(outOf),
      hours: ofCells ? amountTyped(hours) : null,
    };
    if (await record.run({ id: newId(), colonyId, kind, testedOn: day, note: note.trim() || null, ...figures })) {
      setCounted('');
      forgetNote();
    }
  };
  return (
    <form className="stack prints" onSubmit={(event) => void submit(event)}>
      <div className="row">
        <ChoiceField
          label={words.kind}
          value={kind}
          choices={STOCK_TESTS.map((value) => ({ value, text: stock.tests[value].name }))}
          onChange={setKind}
        />
        <DayField label={words.day} value={day} onChange={setDay} problem={problem('testedOn')} />
      </div>
      <div className="row">
        <TextField label={countedWord} value={counted} onChange={setCounted} numeric problem={problem('counted')} />
        {outOfWord ? (
          <TextField label={outOfWord} value={outOf} onChange={setOutOf} numeric problem={problem('outOf')} />
        ) : null}
        {ofCells ? (
          <TextField label={words.hours} value={hours} onChange={setHours} numeric problem={problem('hours')} />
        ) : null}
      </div>
      <TextField label={words.note} value={note} onChange={setNote} problem={problem('note')} />
      <div className="acts">
        <Button type="submit" variant="outlined" disabled={record.state.busy || day === null || counted.trim() === ''}>
          {words.add}
        </Button>
      </div>
      <FoundDraft found={found} />
      <ChangeLines {...record.state} ownFields={['testedOn', 'counted', 'outOf', 'hours', 'note']} />
    </form>
  );
}
