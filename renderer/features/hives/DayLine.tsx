import { Button } from '@mui/material';
import { useId, useState } from 'react';
import type { HiveDetail } from '../../../shared/contract/hives.ts';
import type { Step } from '../../../shared/model/step.ts';
import { dayNumber } from '../../../shared/text/day-text.ts';
import type { Words } from '../../../shared/text/english/english.ts';
import { Textures } from '../../charts/Textures.tsx';
import { DataTable } from '../../components/DataTable.tsx';
import { Section } from '../../components/Section.tsx';
import { useDays, useWords } from '../../components/words.ts';

type DayOfLine = HiveDetail['dayLine'][number];
const CELL = 38;

/** Four weeks as one line of days: hatched where the hive must be left alone, a dot where a job lies; table twin. */
export function DayLine({ days: line }: { days: readonly DayOfLine[] }) {
  const { hives: words, batches, steps } = useWords();
  const days = useDays();
  const [asTable, setAsTable] = useState(false);
  const toggle = (
    <Button size="small" onClick={() => setAsTable(!asTable)}>
      {asTable ? batches.stream.asPicture : batches.stream.asTable}
    </Button>
  );
  return (
    <Section title={words.one.dayLine} acts={toggle}>
      {asTable ? (
        <DataTable
          caption={words.one.dayLine}
          rows={line}
          rowKey={(day) => day.on}
          columns={[
            { key: 'day', title: words.one.dayColumns.day, head: true, cell: (day) => days.short(day.on) },
            {
              key: 'what',
              title: words.one.dayColumns.what,
              cell: (day) => textOf(day, batches.stream.handsOff, steps) || words.one.nothing,
            },
          ]}
        />
      ) : (
        <Picture line={line} handsOff={batches.stream.handsOff} />
      )}
    </Section>
  );
}

const textOf = (day: DayOfLine, handsOff: string, steps: Words['steps']): string =>
  [day.handsOff ? `${handsOff} (${day.handsOff})` : null, ...day.jobs.map((job) => steps[job as Step].title)]
    .filter(Boolean)
    .join(', ');

function Picture({ line, handsOff }: { line: readonly DayOfLine[]; handsOff: string }) {
  const days = useDays();
  const { hives: words, steps } = useWords();
  const id = useId().replaceAll(':', '');
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that may scroll must be reachable by keyboard
    <div role="group" className="table-scroll" tabIndex={0} aria-label={words.one.dayLine}>
      <svg
        width={line.length * CELL + 2}
        height="74"
        role="img"
        aria-label={summary(line, handsOff, words.one.nothing, steps)}
      >
        <Textures prefix={id} />
        {line.map((day, index) => (
          <g key={day.on} transform={`translate(${index * CELL + 1} 1)`}>
            <rect width={CELL} height={40} fill="var(--surface)" stroke="var(--rule)" />
            {day.handsOff ? <rect width={CELL} height={40} fill={`url(#${id}-hands-off)`} opacity="0.6" /> : null}
            {day.jobs.length > 0 ? <circle cx={CELL / 2} cy="20" r="6" fill="var(--ink)" /> : null}
            <text x={CELL / 2} y="55" textAnchor="middle" fontSize="13" fill="var(--ink)">
              {dayNumber(day.on)}
            </text>
            <text x={CELL / 2} y="70" textAnchor="middle" fontSize="12" fill="var(--soft-ink)">
              {days.letters(day.on)}
            </text>
          </g>
        ))}
      </svg>
    </div>
  );
}

function summary(line: readonly DayOfLine[], handsOff: string, nothing: string, steps: Words['steps']): string {
  const parts = line
    .filter((day) => day.handsOff || day.jobs.length > 0)
    .map((day) => `${day.on}: ${textOf(day, handsOff, steps)}`);
  return parts.join('; ') || nothing;
}
