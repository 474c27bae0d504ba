import { Button } from '@mui/material';
import { type FormEvent, useState } from 'react';
import type { HiveLine, HiveList } from '../../../shared/contract/hives.ts';
import { ask } from '../../client/client.ts';
import { newId, useAnswer, useChange } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { DataTable } from '../../components/DataTable.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { HandsOffSign } from '../../components/HandsOffSign.tsx';
import { Page } from '../../components/Page.tsx';
import { goTo } from '../../components/routes.ts';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useDays, useWords } from '../../components/words.ts';
import { leaveAloneTexts } from './leave-alone-texts.ts';

export function Hives() {
  const { hives: words } = useWords();
  const list = useAnswer(['hives'], () => ask.hives.listHives.query());
  if (!list.data) return <Page title={words.title}>{null}</Page>;
  const { hives, yards } = list.data;
  const groups = [...yards.map((yard) => ({ id: yard.id, name: yard.name })), { id: null, name: words.noYard }]
    .map((group) => ({ ...group, lines: hives.filter((hive) => hive.yardId === group.id) }))
    .filter((group) => group.lines.length > 0);
  return (
    <Page title={words.title} acts={hives.length > 0 ? <Acts /> : null}>
      {hives.length === 0 ? <EmptyState title={words.empty} /> : null}
      {groups.map((group) => (
        <Section key={group.name} title={group.name}>
          <HiveTable caption={group.name} lines={group.lines} />
        </Section>
      ))}
      <div className="columns">
        <AddHive yards={yards} />
        <AddYard />
      </div>
    </Page>
  );
}

function Acts() {
  const { hives: words, stock, feeding } = useWords();
  return (
    <>
      <Button onClick={() => goTo('/hives/stock')}>{stock.open}</Button>
      <Button onClick={() => goTo('/hives/feeding')}>{feeding.open}</Button>
      <Button onClick={() => goTo('/hives/looks')}>{words.typeLooks}</Button>
    </>
  );
}

function HiveTable({ caption, lines }: { caption: string; lines: readonly HiveLine[] }) {
  const { hives: words } = useWords();
  const { columns } = words;
  return (
    <DataTable
      caption={caption}
      rows={lines}
      rowKey={(line) => line.id}
      quiet={(line) => line.ended}
      columns={[
        {
          key: 'hive',
          title: columns.hive,
          head: true,
          cell: (line) => <a href={`#/hives/${line.id}`}>{[line.code, line.name].filter(Boolean).join(' ')}</a>,
        },
        {
          key: 'role',
          title: columns.role,
          cell: (line) =>
            line.roles.map((role) => words.roles[role]).join(', ') || <span className="soft">{words.noRole}</span>,
        },
        { key: 'line', title: columns.line, cell: (line) => line.motherLine ?? '' },
        { key: 'place', title: columns.place, cell: (line) => line.place ?? '' },
        { key: 'state', title: columns.state, cell: (line) => <HandsOffText line={line} /> },
        { key: 'batches', title: columns.batches, cell: (line) => batchesText(line, words) },
      ]}
    />
  );
}

function HandsOffText({ line }: { line: HiveLine }) {
  const { hives: words } = useWords();
  const days = useDays();
  const reasons = leaveAloneTexts(line, words, days.short);
  if (reasons.length === 0) return <span className="soft">{words.free}</span>;
  return reasons.map((reason) => (
    <div key={reason} className="hands-off">
      <HandsOffSign size={17} /> {reason}
    </div>
  ));
}

const batchesText = (line: HiveLine, words: ReturnType<typeof useWords>['hives']): string =>
  [
    line.batchesFed > 0 ? words.fed(line.batchesFed) : null,
    line.batchesMothered > 0 ? words.mothered(line.batchesMothered) : null,
  ]
    .filter(Boolean)
    .join(', ');

function AddHive({ yards }: { yards: HiveList['yards'] }) {
  const { hives: words } = useWords();
  const [code, setCode] = useState('');
  const [name, setName] = useState('');
  const [line, setLine] = useState('');
  const [place, setPlace] = useState('');
  const [yardId, setYardId] = useState('');
  const save = useChange(ask.hives.saveHive.mutate);
  const problem = useProblemOf(save.state.refusal);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    const textOrNull = (text: string) => (text.trim() === '' ? null : text);
    const hive = {
      id: newId(),
      code,
      name: textOrNull(name),
      motherLine: textOrNull(line),
      place: textOrNull(place),
      yardId: textOrNull(yardId),
      note: null,
      endedOn: null,
    };
    if (!(await save.run(hive))) return;
    for (const clear of [setCode, setName, setLine, setPlace]) clear('');
  };
  return (
    <Section title={words.add}>
      <form className="stack" onSubmit={(event) => void submit(event)}>
        <div className="row">
          <TextField
            label={words.code}
            value={code}
            onChange={setCode}
            hint={words.codeHint}
            problem={problem('code')}
            required
          />
          <TextField label={words.name} value={name} onChange={setName} problem={problem('name')} />
        </div>
        <div className="row">
          <TextField label={words.line} value={line} onChange={setLine} />
          <TextField label={words.place} value={place} onChange={setPlace} hint={words.placeHint} />
          <ChoiceField
            label={words.yard}
            value={yardId}
            choices={[{ value: '', text: words.noYard }, ...yards.map((yard) => ({ value: yard.id, text: yard.name }))]}
            onChange={setYardId}
            problem={problem('yardId')}
          />
        </div>
        <div className="acts">
          <Button type="submit" variant="outlined" disabled={save.state.busy || code.trim() === ''}>
            {words.add}
          </Button>
        </div>
        <ChangeLines {...save.state} ownFields={['code', 'name', 'yardId']} />
      </form>
    </Section>
  );
}

function AddYard() {
  const { hives: words } = useWords();
  const [name, setName] = useState('');
  const save = useChange(ask.hives.saveYard.mutate);
  const problem = useProblemOf(save.state.refusal);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (await save.run({ id: newId(), name, note: null })) setName('');
  };
  return (
    <Section title={words.addYard}>
      <form className="stack" onSubmit={(event) => void submit(event)}>
        <TextField label={words.yardName} value={name} onChange={setName} problem={problem('name')} required />
        <div className="acts">
          <Button type="submit" variant="outlined" disabled={save.state.busy || name.trim() === ''}>
            {words.addYard}
          </Button>
        </div>
        <ChangeLines {...save.state} ownFields={['name']} />
      </form>
    </Section>
  );
}
