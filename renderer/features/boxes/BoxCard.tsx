import { Button } from '@mui/material';
import { type FormEvent, type ReactNode, useState } from 'react';
import type { BoxLine } from '../../../shared/contract/boxes.ts';
import { PLACEMENT_ENDS, type PlacementEnd } from '../../../shared/model/mating-box.ts';
import { ask } from '../../client/client.ts';
import { useAnswer, useChange } from '../../client/hooks.ts';
import { useRecordHistory } from '../../client/record-history.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { DayField } from '../../components/DayField.tsx';
import { HistoryFold } from '../../components/HistoryFold.tsx';
import { Section } from '../../components/Section.tsx';
import { useDays, useToday, useWords } from '../../components/words.ts';
import { BoxFeeding } from './BoxFeeding.tsx';
import { BoxLooks } from './BoxLooks.tsx';
import { BoxParticulars } from './BoxParticulars.tsx';
import { StateSign } from './StateSign.tsx';

/** One box: what is in it, and how it is freed. */
export function BoxCard({ box, onClose }: { box: BoxLine; onClose: () => void }) {
  const { boxes: words, looks, frame } = useWords();
  const days = useDays();
  const history = useRecordHistory('box', box.id);
  const facts: readonly (readonly [name: string, value: ReactNode])[] = [
    [words.columns.batch, box.batch && <a href={`#/batches/${box.batchId}`}>{box.batch}</a>],
    [words.columns.mother, box.breeder && <a href={`#/hives/${box.breederId}`}>{box.breeder}</a>],
    [words.columns.placed, box.placedOn && days.short(box.placedOn)],
    [words.columns.first, box.firstLookOn && days.short(box.firstLookOn)],
    [words.columns.sealed, box.sealedBroodLookOn && days.short(box.sealedBroodLookOn)],
    [
      words.columns.last,
      box.lastResult && box.lastLookOn ? `${looks[box.lastResult].name}, ${days.short(box.lastLookOn)}` : null,
    ],
    [words.columns.next, box.nextLookOn && days.short(box.nextLookOn)],
    [words.columns.queen, box.queenNumber && <a href={`#/queens/${box.queenId}`}>{box.queenNumber}</a>],
    [words.note, box.note],
    [words.states.free, box.freeFrom && words.freeFrom(days.short(box.freeFrom))],
    [words.states.free, box.ownCellsOn && words.ownCells(days.short(box.ownCellsOn))],
    [
      words.layingWorkersSpan.name,
      box.layingWorkersFrom &&
        box.layingWorkersLatest &&
        words.layingWorkersSpan.days(days.short(box.layingWorkersFrom), days.short(box.layingWorkersLatest)),
    ],
  ];
  return (
    <Section
      title={
        <>
          <StateSign state={box.state} /> {box.code}, {words.states[box.state]}
        </>
      }
      acts={<Button onClick={onClose}>{frame.close}</Button>}
    >
      <dl className="facts" style={{ marginBottom: 14 }}>
        {facts.map(([name, value], place) =>
          value ? (
            // biome-ignore lint/suspicious/noArrayIndexKey: fixed places, some of the same name
            <div key={place} style={{ display: 'contents' }}>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </div>
          ) : null,
        )}
      </dl>
      <BoxLooks boxId={box.id} />
      <BoxFeeding boxId={box.id} />
      <HistoryFold {...history} />
      {box.placementId ? <FreeForm placementId={box.placementId} queen={box.queenNumber} /> : null}
      <details>
        <summary>{words.particulars}</summary>
        <BoxParticulars box={box} />
      </details>
      {box.state === 'free' ? <Retire boxId={box.id} /> : null}
    </Section>
  );
}

function FreeForm({ placementId, queen }: { placementId: string; queen: string | null }) {
  const { boxes: words } = useWords();
  const today = useToday();
  const [reason, setReason] = useState<PlacementEnd>('caught');
  const [hive, setHive] = useState('');
  const [day, setDay] = useState<string | null>(today);
  const end = useChange(ask.boxes.endPlacement.mutate);
  const problem = useProblemOf(end.state.refusal);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const united = reason === 'united' && hive !== '' ? { unitedWith: hive } : {};
    if (day !== null) void end.run({ placementId, endedOn: day, reason, ...united });
  };
  return (
    <form className="row" onSubmit={submit}>
      <ChoiceField
        label={words.freeReason}
        value={reason}
        choices={PLACEMENT_ENDS.map((value) => ({ value, text: words.ends[value] }))}
        onChange={setReason}
      />
      {reason === 'united' && queen !== null ? <HiveOf queen={queen} hive={hive} onChange={setHive} /> : null}
      <DayField label={words.freeDay} value={day} onChange={setDay} problem={problem('endedOn', 'lookedOn')} />
      <Button type="submit" variant="outlined" disabled={end.state.busy || day === null}>
        {words.free}
      </Button>
      <ChangeLines {...end.state} ownFields={['endedOn', 'lookedOn']} />
    </form>
  );
}

/** A queen with a number goes along: into which hive? */
function HiveOf({ queen, hive, onChange }: { queen: string; hive: string; onChange: (id: string) => void }) {
  const { boxes: words } = useWords();
  const hives = useAnswer(['hives'], () => ask.hives.listHives.query());
  const choices = (hives.data?.hives ?? []).map(({ id, code, name }) => ({
    value: id,
    text: [code, name].filter(Boolean).join(' '),
  }));
  return (
    <ChoiceField
      label={words.unitedWith(queen)}
      value={hive}
      choices={[{ value: '', text: words.notSaid }, ...choices]}
      onChange={onChange}
    />
  );
}

function Retire({ boxId }: { boxId: string }) {
  const { boxes: words } = useWords();
  const today = useToday();
  const retire = useChange(ask.boxes.retireBox.mutate);
  return (
    <div className="acts">
      <Button disabled={retire.state.busy} onClick={() => void retire.run({ boxId, retiredOn: today })}>
        {words.retire}
      </Button>
      <ChangeLines {...retire.state} />
    </div>
  );
}
