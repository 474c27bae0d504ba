import { ask } from '../../client/client.ts';
import { useAnswer, useChange } from '../../client/hooks.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { FlightLines } from '../../components/FlightLines.tsx';
import { Section } from '../../components/Section.tsx';
import { WeatherTable } from '../../components/WeatherTable.tsx';
import { useFirstWords } from '../../components/words.ts';

/** While queens fly: the weather of today and yesterday to be noted. */
export function TodayWeather() {
  const { weather: words } = useFirstWords();
  const log = useAnswer(['weather'], () => ask.weather.listWeather.query());
  const save = useChange(ask.weather.saveWeather.mutate);
  if (!log.data || log.data.flying.length === 0) return null;
  return (
    <Section title={words.title} acts={<a href="#/season?tab=weather">{words.allDays}</a>}>
      {log.data.flying.map(({ batchId, batch, flight }) => (
        <p key={batchId} style={{ marginBottom: 8 }}>
          <a href={`#/batches/${batchId}`}>{batch}</a>: <FlightLines flight={flight} />
        </p>
      ))}
      <WeatherTable lines={log.data.days.slice(0, 2)} onSave={(noted) => void save.run(noted)} />
      <ChangeLines {...save.state} />
    </Section>
  );
}
