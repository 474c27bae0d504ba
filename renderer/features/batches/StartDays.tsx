import { Button } from '@mui/material';
import { useState } from 'react';
import type { BatchStart } from '../../../shared/contract/batches.ts';
import type { StartDayLine, StartDayList } from '../../../shared/contract/clashes.ts';
import type { IsoDay } from '../../../shared/kernel/day.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { DataTable } from '../../components/DataTable.tsx';
import { useDays, useSentences, useWords } from '../../components/words.ts';

interface StartDaysProps {
  readonly input: BatchStart;
  readonly onTake: (day: IsoDay) => void;
}

/** Which day to start: opened when wanted, each day of the coming weeks with what it would mean. */
export function StartDays({ input, onTake }: StartDaysProps) {
  const { clashes: words } = useWords();
  const [open, setOpen] = useState(false);
  return (
    <details style={{ marginBottom: 16 }} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{words.whichDay}</summary>
      {open ? <DayList input={input} onTake={onTake} /> : null}
    </details>
  );
}

function DayList({ input, onTake }: StartDaysProps) {
  const say = useSentences();
  const { clashes: words } = useWords();
  const days = useDays();
  const [all, setAll] = useState(false);
  // The day in the form does not matter: every day is looked at.
  const wish = { ...input, anchorOn: days.today };
  const answer = useAnswer(['start-days', JSON.stringify(wish)], () => ask.batches.listStartDays.query(wish));
  if (!answer.data) return null;
  if (!answer.data.ok) return <p className="line-problem">{say.refusal(answer.data.refusal)}</p>;
  const list = answer.data.value;
  const good = list.days.filter(({ rank }) => rank !== null).toSorted((a, b) => (a.rank ?? 0) - (b.rank ?? 0));
  const shown = all ? list.days : good.slice(0, 7);
  return (
    <div className="stack">
      <p>{good.length === 0 ? words.noGoodDay(list.days.length) : words.goodDays(good.length, list.days.length)}</p>
      {shown.length > 0 ? <DayTable list={list} days={shown} chosen={input.anchorOn} onTake={onTake} /> : null}
      <div className="acts">
        <Button size="small" onClick={() => setAll(!all)}>
          {all ? words.showGood : words.showAll(list.days.length)}
        </Button>
      </div>
    </div>
  );
}

interface DayTableProps {
  readonly list: StartDayList;
  readonly days: readonly StartDayLine[];
  readonly chosen: IsoDay;
  readonly onTake: (day: IsoDay) => void;
}

function DayTable({ list, days, chosen, onTake }: DayTableProps) {
  const { clashes: words } = useWords();
  const text = useDays();
  return (
    <DataTable
      caption={words.whichDay}
      rows={days}
      rowKey={(day) => day.on}
      quiet={(day) => day.rank === null}
      columns={[
        {
          key: 'day',
          title: words.columns.day,
          head: true,
          cell: (day) => <span className="nowrap">{text.short(day.on)}</span>,
        },
        { key: 'means', title: words.columns.means, cell: (day) => <Meaning day={day} names={list.names} /> },
        {
          key: 'take',
          title: <span className="visually-hidden">{words.take}</span>,
          cell: (day) =>
            day.on === chosen ? (
              <span className="good">✓ {words.taken}</span>
            ) : (
              <Button
                size="small"
                variant={day.rank === null ? 'text' : 'outlined'}
                aria-label={words.takeDay(text.short(day.on))}
                onClick={() => onTake(day.on)}
              >
                {words.take}
              </Button>
            ),
        },
      ]}
    />
  );
}

function Meaning({ day, names }: { day: StartDayLine; names: StartDayList['names'] }) {
  const { clashes: words, stepTitles, sentences } = useWords();
  const days = useDays();
  const wording = { batch: (id: string) => names[id] ?? words.thisBatch, day: days.short };
  return (
    <>
      {day.troubles.length === 0 ? <span className="good">{words.good} </span> : null}
      {day.troubles.map((trouble) => (
        <span key={JSON.stringify(trouble)}>{sentences.startTrouble(trouble, wording)} </span>
      ))}
      {day.shiftedSteps.length > 0 ? `${words.shifted(day.shiftedSteps.map((step) => stepTitles[step]))} ` : null}
      <span className="soft small">
        {words.gives(day.placeOn === null ? null : days.short(day.placeOn), days.short(day.emergesOn))}
      </span>
    </>
  );
}
