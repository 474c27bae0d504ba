import { ask } from '../../client/client.ts';
import { useAnswer, useChange } from '../../client/hooks.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { FlightLines } from '../../components/FlightLines.tsx';
import { WeatherTable } from '../../components/WeatherTable.tsx';
import { useWords } from '../../components/words.ts';

/** The weather log of the year, and what it means for the batches whose queens fly. */
export function Weather() {
  const { weather: words } = useWords();
  const log = useAnswer(['weather'], () => ask.weather.listWeather.query());
  const save = useChange(ask.weather.saveWeather.mutate);
  if (!log.data) return null;
  return (
    <div className="stack">
      <p>{words.line}</p>
      {log.data.flying.map(({ batchId, batch, flight }) => (
        <p key={batchId}>
          <a href={`#/batches/${batchId}`}>{batch}</a>: <FlightLines flight={flight} />
        </p>
      ))}
      <WeatherTable lines={log.data.days} onSave={(noted) => void save.run(noted)} />
      <p className="soft small">
        {words.hint} <a href="#/files">{words.fromFile}</a>
      </p>
      <ChangeLines {...save.state} />
    </div>
  );
}
