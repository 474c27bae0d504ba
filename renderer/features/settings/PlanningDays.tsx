import { Button } from '@mui/material';
import { type FormEvent, useState } from 'react';
import type { Settings } from '../../../shared/contract/settings.ts';
import type { IsoDay } from '../../../shared/kernel/day.ts';
import { ask } from '../../client/client.ts';
import { useChange } from '../../client/hooks.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { DayField } from '../../components/DayField.tsx';
import { useFollowing } from '../../components/following.ts';
import { Section } from '../../components/Section.tsx';
import { useDays, useWords } from '../../components/words.ts';
import { awaySpans, withoutSpan, withSpan } from './away-days.ts';

const WEEKDAYS = [1, 2, 3, 4, 5, 6, 7] as const;
const FROM_SUNDAY = [7, 1, 2, 3, 4, 5, 6] as const;

/** Which days suit the person, and from when there are drones: what clashes and start days are reckoned with. */
export function PlanningDays({ settings }: { settings: Settings }) {
  const { settings: words } = useWords();
  return (
    <Section title={words.yourDays}>
      <p className="soft small" style={{ marginBottom: 12 }}>
        {words.yourDaysLine}
      </p>
      <div className="stack" style={{ maxWidth: 420 }}>
        <Weekdays settings={settings} />
        <AwayDays settings={settings} />
        <DroneDay settings={settings} />
      </div>
    </Section>
  );
}

function Weekdays({ settings }: { settings: Settings }) {
  const { settings: words } = useWords();
  const save = useChange(ask.settings.saveSettings.mutate);
  const chosen = settings.workWeekdays.length === 0 ? [...WEEKDAYS] : settings.workWeekdays;
  const toggle = (weekday: number, on: boolean) => {
    const next = on ? [...chosen, weekday] : chosen.filter((one) => one !== weekday);
    if (next.length > 0) void save.run({ workWeekdays: [...new Set(next)].toSorted() });
  };
  return (
    <fieldset>
      <legend>{words.weekdays}</legend>
      <div className="row">
        {(settings.weekStart === 'sunday' ? FROM_SUNDAY : WEEKDAYS).map((weekday) => (
          <label key={weekday} className="check">
            <input
              type="checkbox"
              checked={chosen.includes(weekday)}
              disabled={chosen.length === 1 && chosen.includes(weekday)}
              onChange={(event) => toggle(weekday, event.target.checked)}
            />
            {words.weekdayNames[weekday]}
          </label>
        ))}
      </div>
      <ChangeLines {...save.state} />
    </fieldset>
  );
}

function AwayDays({ settings }: { settings: Settings }) {
  const { settings: words } = useWords();
  const days = useDays();
  const [from, setFrom] = useState<IsoDay | null>(null);
  const [to, setTo] = useState<IsoDay | null>(null);
  const [added, setAdded] = useState(0);
  const [tooLong, setTooLong] = useState(false);
  const save = useChange(ask.settings.saveSettings.mutate);
  const add = async (event: FormEvent) => {
    event.preventDefault();
    if (from === null) return;
    const next = withSpan(settings.awayDays, { from, to: to ?? from });
    setTooLong(next === null);
    if (next === null || !(await save.run({ awayDays: [...next] }))) return;
    setFrom(null);
    setTo(null);
    setAdded(added + 1);
  };
  return (
    <form className="stack" onSubmit={(event) => void add(event)}>
      <fieldset>
        <legend>{words.away}</legend>
        <ul>
          {awaySpans(settings.awayDays).map((span) => (
            <li key={span.from}>
              {words.awaySpan(days.short(span.from), days.short(span.to))}{' '}
              <Button
                size="small"
                aria-label={words.awayRemove(days.short(span.from))}
                onClick={() => void save.run({ awayDays: [...withoutSpan(settings.awayDays, span)] })}
              >
                {words.remove}
              </Button>
            </li>
          ))}
        </ul>
        {settings.awayDays.length === 0 ? <p className="soft">{words.neverAway}</p> : null}
        <div className="row" key={added}>
          <DayField
            label={words.awayFrom}
            value={from}
            onChange={setFrom}
            problem={tooLong ? words.awayTooLong : null}
          />
          <DayField label={words.awayTo} value={to} onChange={setTo} />
        </div>
        <div className="acts">
          <Button type="submit" variant="outlined" disabled={from === null || save.state.busy}>
            {words.awayAdd}
          </Button>
        </div>
      </fieldset>
      <ChangeLines {...save.state} />
    </form>
  );
}

function DroneDay({ settings }: { settings: Settings }) {
  const { settings: words } = useWords();
  const [day, setDay] = useFollowing<IsoDay | null>(settings.firstDroneEggsOn);
  const save = useChange(ask.settings.saveSettings.mutate);
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        void save.run({ firstDroneEggsOn: day });
      }}
    >
      <DayField label={words.droneEggs} value={day} onChange={setDay} />
      <p className="soft small">{words.droneEggsHint}</p>
      <div className="acts">
        <Button type="submit" variant="outlined" disabled={save.state.busy || day === settings.firstDroneEggsOn}>
          {words.droneSave}
        </Button>
        {save.state.done ? (
          <span className="line-good" role="status">
            {words.saved}
          </span>
        ) : null}
      </div>
      <ChangeLines {...save.state} />
    </form>
  );
}
