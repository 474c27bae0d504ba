import { Button } from '@mui/material';
import { useState } from 'react';
import { DAY_ORDERS, IMPORT_KINDS, type ImportTable, type TablePreview } from '../../../shared/contract/import.ts';
import { BOX_TYPES, METHODS } from '../../../shared/model/method.ts';
import { QUEEN_PLACES } from '../../../shared/model/queen.ts';
import { ask } from '../../client/client.ts';
import { type HandedFile, readHandedFile } from '../../client/handed-file.ts';
import { useChange, useResult } from '../../client/hooks.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { FileField } from '../../components/FileField.tsx';
import { Section } from '../../components/Section.tsx';
import { useWords } from '../../components/words.ts';
import { MatchColumns } from './MatchColumns.tsx';
import { RowProblems } from './RowProblems.tsx';

type Choice = Omit<ImportTable, 'file'>;
const FIRST_CHOICE: Choice = {
  kind: 'hives',
  sheet: null,
  columns: null,
  dayOrder: null,
  method: 'larva-grafting',
  boxType: 'mini',
  queenPlace: 'in-hive',
  leaveOut: false,
};

/** Takes a table in: file, what its columns are, what is wrong with which row, and only then the rows. */
export function TablesIn() {
  const { tablesIn: words } = useWords();
  const [file, setFile] = useState<HandedFile | null>(null);
  const [choice, setChoice] = useState(FIRST_CHOICE);
  const [outcome, setOutcome] = useState<string | null>(null);
  const wish = file ? { ...choice, file } : null;
  const preview = useResult(
    ['table-in', file?.chosen, choice],
    () => (wish ? ask.files.previewTable.query(wish) : Promise.resolve(null)),
    wish !== null,
  );
  const take = useChange(ask.files.importTable.mutate);
  const change = (changes: Partial<Choice>) => {
    setChoice({ ...choice, ...changes });
    setOutcome(null);
    take.clear();
  };
  const choose = async (chosen: File) => {
    change({ sheet: null, columns: null, dayOrder: null });
    setFile(await readHandedFile(chosen));
  };
  const takeIn = async () => {
    const done = wish && (await take.run(wish));
    if (!done) return;
    setOutcome(words.taken(done.added, done.leftOut, done.copied));
    setFile(null);
  };
  return (
    <Section title={words.title}>
      <div className="stack">
        <p className="soft">{words.explain}</p>
        <div className="columns">
          <ChoiceField
            label={words.kind}
            value={choice.kind}
            choices={IMPORT_KINDS.map((value) => ({ value, text: words.kinds[value] }))}
            onChange={(kind) => change({ kind, columns: null })}
          />
          <FileField label={words.file} accept=".csv,.txt,.tsv,.xlsx" onChange={(chosen) => void choose(chosen)} />
        </div>
        {outcome ? (
          <p className="line-good" role="status">
            {outcome}
          </p>
        ) : null}
        <ChangeLines refusal={preview.refusal} notReached={preview.notReached} />
        {file && preview.value ? (
          <TableAsRead preview={preview.value} choice={choice} change={change} busy={take.state.busy} take={takeIn} />
        ) : null}
        <ChangeLines {...take.state} />
      </div>
    </Section>
  );
}

interface TableAsReadProps {
  readonly preview: TablePreview;
  readonly choice: Choice;
  readonly change: (changes: Partial<Choice>) => void;
  readonly busy: boolean;
  readonly take: () => Promise<void>;
}

function TableAsRead({ preview, choice, change, busy, take }: TableAsReadProps) {
  const { tablesIn: words, importFields } = useWords();
  const isReady = preview.missing.length === 0 && !preview.dayOrderUnclear;
  const canTake = isReady && preview.ready > 0 && (preview.problemRows === 0 || choice.leaveOut);
  return (
    <>
      <HowToRead preview={preview} choice={choice} change={change} />
      <MatchColumns preview={preview} kind={choice.kind} setColumns={(columns) => change({ columns })} />
      {preview.missing.length > 0 ? (
        <p className="line-problem" role="alert">
          {words.missing(preview.missing.map((field) => importFields[field]))}
        </p>
      ) : null}
      {isReady ? (
        <>
          <p role="status">{words.ready(preview.ready, preview.rowCount)}</p>
          {preview.newYards.length > 0 ? <p>{words.newYards(preview.newYards)}</p> : null}
          {choice.kind === 'counts' ? <p className="soft">{words.countsHint}</p> : null}
          <RowProblems preview={preview} leaveOut={choice.leaveOut} setLeaveOut={(leaveOut) => change({ leaveOut })} />
        </>
      ) : null}
      <div className="acts">
        <Button variant="contained" disabled={!canTake || busy} onClick={() => void take()}>
          {words.take(preview.ready)}
        </Button>
      </div>
    </>
  );
}

/** What the file itself does not say: which sheet, how its days are written, what holds for all rows. */
function HowToRead({ preview, choice, change }: Pick<TableAsReadProps, 'preview' | 'choice' | 'change'>) {
  const { tablesIn: words, methods, boxTypes, queens } = useWords();
  const asks = preview.dayOrderUnclear || preview.dayOrder !== null;
  return (
    <div className="columns">
      {preview.sheets.length > 1 ? (
        <ChoiceField
          label={words.sheet}
          value={preview.sheet ?? ''}
          choices={preview.sheets.map((value) => ({ value, text: value }))}
          onChange={(sheet) => change({ sheet, columns: null })}
        />
      ) : null}
      {asks ? (
        <ChoiceField
          label={words.dayOrder}
          value={choice.dayOrder ?? preview.dayOrder ?? ''}
          choices={[
            { value: '', text: words.notSaid },
            ...DAY_ORDERS.map((value) => ({ value, text: words.dayOrders[value] })),
          ]}
          onChange={(order) => change({ dayOrder: order === '' ? null : order })}
          problem={preview.dayOrderUnclear ? words.unclear : null}
        />
      ) : null}
      {choice.kind === 'counts' ? (
        <ChoiceField
          label={words.method}
          value={choice.method}
          choices={METHODS.map((value) => ({ value, text: methods[value].name }))}
          onChange={(method) => change({ method })}
        />
      ) : null}
      {choice.kind === 'boxes' ? (
        <ChoiceField
          label={words.boxType}
          value={choice.boxType}
          choices={BOX_TYPES.map((value) => ({ value, text: boxTypes[value].name }))}
          onChange={(boxType) => change({ boxType })}
        />
      ) : null}
      {choice.kind === 'queens' ? (
        <ChoiceField
          label={words.queenPlace}
          value={choice.queenPlace}
          choices={QUEEN_PLACES.map((value) => ({ value, text: queens.places[value] }))}
          onChange={(queenPlace) => change({ queenPlace })}
        />
      ) : null}
    </div>
  );
}
