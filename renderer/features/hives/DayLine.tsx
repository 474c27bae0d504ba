import { Button } from '@mui/material';
import { type ReactNode, useId, useState } from 'react';
import type { HiveDetail } from '../../../shared/contract/hives.ts';
import type { Step } from '../../../shared/model/step.ts';
import { dayNumber } from '../../../shared/text/day-text.ts';
import type { Words } from '../../../shared/text/english/english.ts';
import { Textures } from '../../charts/Textures.tsx';
import { DataTable } from '../../components/DataTable.tsx';
import { Section } from '../../components/Section.tsx';
import { useDays, useWords } from '../../components/words.ts';

type DayOfLine = HiveDetail['dayLine'][number];
const CELL = 30;

/**
 * The days around today as one line: hatched where the hive must be left alone, a dot where a job lies, a ring where it
 * was looked into, a drop where it was fed; table twin.
 */
export function DayLine({ days: line }: { days: readonly DayOfLine[] }) {
  const { hives: words, batches } = useWords();
  const days = useDays();
  const said = useDayWords();
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
              cell: (day) => textOf(day, said) || words.one.nothing,
            },
          ]}
        />
      ) : (
        <Picture line={line} />
      )}
    </Section>
  );
}

interface DayWords {
  readonly marks: Words['hives']['one']['dayMarks'];
  readonly newQueen: (queen: string) => string;
  readonly handsOff: string;
  readonly titles: Words['stepTitles'];
}

function useDayWords(): DayWords {
  const { hives, batches, stepTitles, followUps } = useWords();
  return {
    marks: hives.one.dayMarks,
    newQueen: followUps.broughtIn,
    handsOff: batches.stream.handsOff,
    titles: stepTitles,
  };
}

const textOf = (day: DayOfLine, { marks, newQueen, handsOff, titles }: DayWords): string =>
  [
    day.handsOff ? `${handsOff} (${day.handsOff})` : null,
    day.newQueen ? `${marks.handsOff} (${newQueen(day.newQueen)})` : null,
    day.looked ? marks.looked : null,
    day.fed ? marks.fed : null,
    ...day.jobs.map((job) => titles[job as Step]),
  ]
    .filter(Boolean)
    .join(', ');

function Picture({ line }: { line: readonly DayOfLine[] }) {
  const days = useDays();
  const { hives: words } = useWords();
  const said = useDayWords();
  const id = useId().replaceAll(':', '');
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that may scroll must be reachable by keyboard */}
      <div role="group" className="table-scroll" tabIndex={0} aria-label={words.one.dayLine}>
        <svg width={line.length * CELL + 2} height="76" role="img" aria-label={summary(line, words.one.nothing, said)}>
          <Textures prefix={id} />
          {line.map((day, index) => {
            const isToday = day.on === days.today;
            return (
              <g key={day.on} transform={`translate(${index * CELL + 1} 1)`}>
                <rect width={CELL} height={42} fill="var(--surface)" stroke="var(--rule)" />
                {day.handsOff || day.newQueen ? (
                  <rect width={CELL} height={42} fill={`url(#${id}-hands-off)`} opacity="0.6" />
                ) : null}
                {isToday ? <path d={`M0 1.5H${CELL}M0 40.5H${CELL}`} stroke="var(--ink)" strokeWidth="3" /> : null}
                <g transform={`translate(${CELL / 2} 0)`}>
                  <DayMarks day={day} />
                </g>
                <text
                  x={CELL / 2}
                  y="57"
                  textAnchor="middle"
                  fontSize="13"
                  fontWeight={isToday ? 700 : 400}
                  fill="var(--ink)"
                >
                  {dayNumber(day.on)}
                </text>
                <text x={CELL / 2} y="72" textAnchor="middle" fontSize="12" fill="var(--soft-ink)">
                  {days.letters(day.on)}
                </text>
              </g>
            );
          })}
        </svg>
      </div>
      <DayLegend id={id} marks={said.marks} />
    </>
  );
}

const DROP = 'M0 -6.5C2.6 -3 4.2 -1 4.2 1.4a4.2 4.2 0 0 1 -8.4 0C-4.2 -1 -2.6 -3 0 -6.5Z';

/** A ring for a look, a drop for a feeding, a dot for a job; each in its own height of the cell. */
function DayMarks({ day }: { day: Pick<DayOfLine, 'looked' | 'fed' | 'jobs'> }) {
  return (
    <>
      {day.looked ? <circle cy="12" r="4.5" fill="none" stroke="var(--ink)" strokeWidth="1.8" /> : null}
      {day.fed ? <path d={DROP} transform="translate(0 29)" fill="var(--hands-off)" stroke="var(--ink)" /> : null}
      {day.jobs.length > 0 ? <circle cy="21" r="6" fill="var(--ink)" /> : null}
    </>
  );
}

const NO_DAY = { looked: false, fed: false, jobs: [] } as const;

function DayLegend({ id, marks }: { id: string; marks: DayWords['marks'] }) {
  const sign = (middle: number, drawn: ReactNode) => (
    <svg width="18" height="18" viewBox={`-9 ${middle - 9} 18 18`} aria-hidden="true" className="in-line">
      {drawn}
    </svg>
  );
  const hatch = <rect x="-8" y="1" width="16" height="16" fill={`url(#${id}-hands-off)`} stroke="var(--rule)" />;
  const signs = [
    [marks.job, sign(21, <DayMarks day={{ ...NO_DAY, jobs: ['job'] }} />)],
    [marks.looked, sign(12, <DayMarks day={{ ...NO_DAY, looked: true }} />)],
    [marks.fed, sign(29, <DayMarks day={{ ...NO_DAY, fed: true }} />)],
    [marks.handsOff, sign(9, hatch)],
  ] as const;
  return (
    <p className="signs soft small">
      {signs.map(([word, drawn]) => (
        <span key={word} className="nowrap">
          {drawn} {word}
        </span>
      ))}
    </p>
  );
}

function summary(line: readonly DayOfLine[], nothing: string, said: DayWords): string {
  const parts = line
    .map((day) => ({ on: day.on, text: textOf(day, said) }))
    .filter(({ text }) => text !== '')
    .map(({ on, text }) => `${on}: ${text}`);
  return parts.join('; ') || nothing;
}
