import { InputBase } from '@mui/material';
import { type FocusEvent, useState } from 'react';
import type { WeatherLine } from '../../shared/contract/weather.ts';
import { readWeather, type TypedWeather, typedWeather, type WeatherField } from './weather-form.ts';
import { useDays, useFirstWords, useTemperatureUnit } from './words.ts';

type Save = (noted: Omit<WeatherLine, 'rating'>) => void;

/** The weather of some days as rows to type in; a row is saved as it is left. */
export function WeatherTable({ lines, onSave }: { lines: readonly WeatherLine[]; onSave: Save }) {
  const { weather: words } = useFirstWords();
  const { columns } = words;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that may scroll must be reachable by keyboard
    <div role="group" className="table-scroll" tabIndex={0} aria-label={words.title}>
      <table className="plain weather">
        <thead>
          <tr>
            {Object.entries(columns).map(([key, title]) => (
              <th key={key} scope="col">
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <WeatherRow key={JSON.stringify(line)} line={line} onSave={onSave} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

const NUMBERS: readonly WeatherField[] = ['maxCelsius', 'windKmh', 'flyingHours'];

function WeatherRow({ line, onSave }: { line: WeatherLine; onSave: Save }) {
  const { weather: words } = useFirstWords();
  const days = useDays();
  const unit = useTemperatureUnit();
  const [typed, setTyped] = useState<TypedWeather>(() => typedWeather(line, unit));
  const read = readWeather(typed, unit);
  const wrong = typeof read === 'string' ? read : null;
  const leave = (event: FocusEvent<HTMLTableRowElement>) => {
    if (event.currentTarget.contains(event.relatedTarget) || typeof read === 'string') return;
    const before = typedWeather(line, unit);
    if (Object.keys(before).some((key) => before[key as keyof TypedWeather] !== typed[key as keyof TypedWeather]))
      onSave({ day: line.day, ...read });
  };
  const day = days.short(line.day);
  const number = (field: WeatherField) => (
    <td key={field}>
      <InputBase
        className="control"
        value={typed[field]}
        onChange={(event) => setTyped({ ...typed, [field]: event.target.value })}
        slotProps={{
          input: {
            'aria-label': words.field(words.columns[field], day),
            'aria-invalid': wrong === field ? true : undefined,
            inputMode: 'decimal',
            autoComplete: 'off',
          },
        }}
      />
      {wrong === field ? (
        <p className="line-problem small" role="alert">
          {words.problems[field]}
        </p>
      ) : null}
    </td>
  );
  return (
    <tr onBlur={leave}>
      <th scope="row" className="nowrap">
        {day}
      </th>
      {NUMBERS.slice(0, 2).map(number)}
      <td>
        <select
          className="control"
          aria-label={words.field(words.columns.rain, day)}
          value={typed.rain}
          onChange={(event) => setTyped({ ...typed, rain: event.target.value as TypedWeather['rain'] })}
        >
          {(['unknown', 'no', 'yes'] as const).map((rain) => (
            <option key={rain} value={rain}>
              {words.rains[rain]}
            </option>
          ))}
        </select>
      </td>
      {NUMBERS.slice(2).map(number)}
      <td className={RATING_CLASS[line.rating]}>{words.ratings[line.rating]}</td>
    </tr>
  );
}

const RATING_CLASS = { good: 'good', possible: '', poor: 'bad', unknown: 'soft' } as const;
