import { Button } from '@mui/material';
import { type FormEvent, useCallback, useState } from 'react';
import type { QueenDetail } from '../../../shared/contract/queens.ts';
import { INTRODUCTION_WAYS, type IntroductionWay } from '../../../shared/model/queen-story.ts';
import { ask } from '../../client/client.ts';
import { useDraft } from '../../client/drafts.ts';
import { newId, useAnswer, useChange } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { DayField } from '../../components/DayField.tsx';
import { FoundDraft } from '../../components/FoundDraft.tsx';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useToday, useWords } from '../../components/words.ts';
import { MOVE_PLACES, type MovePlace } from './move-keys.ts';
import { useMoveKeys } from './use-move-keys.ts';

/** Give, sell, bring to a hive, cage, dead or lost: one key chooses, the fields that matter follow. */
export function MoveForm({ line }: { line: QueenDetail }) {
  const { move: words } = useWords().queens;
  const [place, setPlace] = useState<MovePlace | null>(null);
  useMoveKeys(useCallback((chosen) => setPlace(chosen), []));
  return (
    <Section title={words.title}>
      <fieldset>
        <legend className="visually-hidden">{words.choose}</legend>
        <div className="acts" style={{ marginBottom: 10 }}>
          {MOVE_PLACES.map((one) => (
            <Button
              key={one}
              variant={one === place ? 'contained' : 'outlined'}
              aria-pressed={one === place}
              onClick={() => setPlace(one)}
            >
              {words.acts[one]}
            </Button>
          ))}
        </div>
      </fieldset>
      {place ? <MoveFields key={place} line={line} place={place} onDone={() => setPlace(null)} /> : null}
      <p className="soft small">{words.keys}</p>
    </Section>
  );
}

interface MoveFieldsProps {
  readonly line: QueenDetail;
  readonly place: MovePlace;
  readonly onDone: () => void;
}

function MoveFields({ line, place, onDone }: MoveFieldsProps) {
  const { move: words } = useWords().queens;
  const today = useToday();
  const [day, setDay] = useState<string | null>(today);
  const [colonyId, setColonyId] = useState('');
  const [way, setWay] = useState<IntroductionWay>('candy-cage');
  const [goneTo, setGoneTo] = useState(line.promise?.promisedTo ?? '');
  const [price, setPrice] = useState('');
  const { value: note, set: setNote, found, forget: forgetNote } = useDraft(`queen-move-note:${line.queen.id}`, '');
  const move = useChange(ask.queens.moveQueen.mutate);
  const problem = useProblemOf(move.state.refusal);
  const toPerson = place === 'given' || place === 'sold';
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (day === null) return;
    const toHive = place === 'in-hive' ? { colonyId: colonyId || null, way } : { colonyId: null, way: null };
    const toOther = {
      goneTo: (toPerson && goneTo.trim()) || null,
      price: price.trim() || null,
      note: note.trim() || null,
    };
    const done = await move.run({ id: newId(), queenId: line.queen.id, movedOn: day, place, ...toHive, ...toOther });
    if (!done) return;
    forgetNote();
    if (done.notices.length === 0) onDone();
  };
  return (
    <form className="stack" onSubmit={(event) => void submit(event)}>
      {place === 'in-hive' ? (
        <HiveFields {...{ colonyId, setColonyId, way, setWay }} problem={problem('colonyId')} />
      ) : null}
      {toPerson ? (
        <div className="row">
          <TextField
            label={words.goneTo}
            value={goneTo}
            onChange={setGoneTo}
            problem={problem('goneTo')}
            list="receivers"
            autoFocus
          />
          <datalist id="receivers">
            {line.receivers.map((name) => (
              <option key={name} value={name} />
            ))}
          </datalist>
          {place === 'sold' ? (
            <TextField label={words.price} value={price} onChange={setPrice} problem={problem('price')} />
          ) : null}
        </div>
      ) : null}
      <div className="row">
        <DayField label={words.day} value={day} onChange={setDay} problem={problem('movedOn')} />
        <TextField label={words.note} value={note} onChange={setNote} problem={problem('note')} />
      </div>
      {toPerson ? <p className="soft small">{words.caution}</p> : null}
      <div className="acts">
        <Button type="submit" variant="contained" disabled={move.state.busy || day === null || move.state.done}>
          {words.done}
        </Button>
      </div>
      <FoundDraft found={found} />
      <ChangeLines {...move.state} ownFields={['colonyId', 'goneTo', 'price', 'movedOn', 'note']} />
    </form>
  );
}

interface HiveFieldsProps {
  readonly colonyId: string;
  readonly setColonyId: (colonyId: string) => void;
  readonly way: IntroductionWay;
  readonly setWay: (way: IntroductionWay) => void;
  readonly problem: string | null;
}

function HiveFields({ colonyId, setColonyId, way, setWay, problem }: HiveFieldsProps) {
  const { move: words } = useWords().queens;
  const hives = useAnswer(['hives'], () => ask.hives.listHives.query());
  const choices = (hives.data?.hives ?? [])
    .filter((hive) => !hive.ended)
    .map((hive) => ({ value: hive.id, text: [hive.code, hive.name].filter(Boolean).join(' ') }));
  return (
    <div className="row">
      <ChoiceField
        label={words.hive}
        value={colonyId}
        choices={[{ value: '', text: words.chooseHive }, ...choices]}
        onChange={setColonyId}
        problem={problem}
      />
      <ChoiceField
        label={words.way}
        value={way}
        choices={INTRODUCTION_WAYS.map((value) => ({ value, text: words.ways[value] }))}
        onChange={setWay}
      />
    </div>
  );
}
