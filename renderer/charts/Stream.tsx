import { Button } from '@mui/material';
import { type KeyboardEvent, useId, useState } from 'react';
import type { StreamPicture, StreamStage } from '../../shared/contract/batches.ts';
import { dayNumber } from '../../shared/text/day-text.ts';
import { DataTable } from '../components/DataTable.tsx';
import { useDays, useWords } from '../components/words.ts';
import { resultSign } from './result-signs.ts';
import { layOutStream, type StreamLayout, type StreamSize } from './stream-layout.ts';
import { Textures } from './Textures.tsx';

const SIZE: StreamSize = { width: 1100, height: 228 };
const SMALL: StreamSize = { width: 220, height: 44 };

/** The batch picture, with its table twin and its summary as a sentence. */
export function Stream({ stream }: { stream: StreamPicture }) {
  const { batches } = useWords();
  const words = batches.stream;
  const [asTable, setAsTable] = useState(false);
  return (
    <figure
      className="section"
      onKeyDown={(event) => {
        if (event.key.toLowerCase() === 't' && !event.ctrlKey && !event.altKey) setAsTable(!asTable);
      }}
    >
      {asTable ? <StreamTable stream={stream} /> : <StreamDrawing stream={stream} />}
      <figcaption>
        <StreamSummary stream={stream} />{' '}
        <Button size="small" variant="text" onClick={() => setAsTable(!asTable)}>
          {asTable ? words.asPicture : words.asTable} <kbd style={{ marginInlineStart: 6 }}>T</kbd>
        </Button>
      </figcaption>
    </figure>
  );
}

function StreamSummary({ stream }: { stream: StreamPicture }) {
  const { batches } = useWords();
  const counted = stream.bands.filter((band) => !band.forecast && band.alive !== null);
  const parts = counted.map((band) => `${batches.stream.stages[band.stage]} ${band.alive}`);
  return <>{parts.length === 0 ? batches.stream.unknown : batches.stream.summary(parts.join(', '))}</>;
}

function StreamDrawing({ stream }: { stream: StreamPicture }) {
  const { batches } = useWords();
  const days = useDays();
  const id = useId().replaceAll(':', '');
  const [chosen, setChosen] = useState<number | null>(null);
  const layout = layOutStream(stream, SIZE);
  const day = chosen === null ? null : (layout.days[chosen] ?? null);
  const move = (event: KeyboardEvent) => {
    const last = layout.days.length - 1;
    const now =
      chosen ??
      Math.max(
        0,
        layout.days.findIndex((one) => one.on === stream.today),
      );
    const next = { ArrowLeft: now - 1, ArrowRight: now + 1, Home: 0, End: last }[event.key];
    if (next === undefined) return;
    event.preventDefault();
    setChosen(Math.min(last, Math.max(0, next)));
  };
  return (
    <div className="table-scroll">
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: the picture is read day by day with the arrow keys */}
      <div tabIndex={0} role="img" aria-label={batches.stream.title} onKeyDown={move} style={{ minWidth: 640 }}>
        <svg viewBox={`0 0 ${SIZE.width} ${SIZE.height}`} width="100%" aria-hidden="true">
          <Textures prefix={id} />
          <Bands layout={layout} prefix={id} />
          <Wedge layout={layout} />
          <Threads layout={layout} />
          <Gates layout={layout} prefix={id} text={batches.stream.handsOff} />
          <BandLabels layout={layout} words={batches.stream.stages} />
          <Axis layout={layout} today={batches.stream.today} />
          <Marks layout={layout} />
          {day ? (
            <rect
              x={day.x}
              y={4}
              width={layout.dayWidth}
              height={SIZE.height - 40}
              fill="none"
              stroke="var(--focus)"
              strokeWidth="2"
            />
          ) : null}
        </svg>
      </div>
      <p className="soft small" aria-live="polite">
        {day ? dayReading(stream, day.on, days.full, batches.stream) : batches.stream.keys}
      </p>
    </div>
  );
}

type StreamWords = ReturnType<typeof useWords>['batches']['stream'];

function dayReading(stream: StreamPicture, on: string, full: (day: string) => string, words: StreamWords): string {
  const band = stream.bands.find((one) => one.from <= on && on < one.to) ?? stream.bands.at(-1);
  if (!band) return full(on);
  return words.dayRead(full(on), words.stages[band.stage], aliveText(band, words));
}

/** A number that was counted stands as it is; ahead of the counts it is only a bound. */
function aliveText({ alive, forecast }: StreamPicture['bands'][number], words: StreamWords): string {
  if (alive === null) return words.unknown;
  return forecast ? words.atMost(alive) : words.alive(alive);
}

/** The stream in a few pixels, for lists; the row beside it says the same in numbers. */
export function SmallStream({ stream }: { stream: StreamPicture }) {
  const id = useId().replaceAll(':', '');
  const layout = layOutStream(stream, { ...SMALL, height: 110 });
  return (
    <svg
      viewBox={`0 ${layout.middle - 22} ${SMALL.width} ${SMALL.height}`}
      width={SMALL.width}
      height={SMALL.height}
      aria-hidden="true"
    >
      <Textures prefix={id} />
      {layout.bands.map((band) => (
        <rect
          key={band.stage}
          x={band.x}
          y={layout.middle - band.thickness * 0.4}
          width={band.width}
          height={Math.max(2, band.thickness * 0.8)}
          fill={`url(#${id}-${band.stage})`}
          stroke="var(--rule)"
          strokeWidth="0.7"
          opacity={band.forecast ? 0.55 : 1}
        />
      ))}
      {layout.todayX === null ? null : (
        <path d={`M${layout.todayX} ${layout.middle - 22}v44`} stroke="var(--ink)" strokeWidth="1.6" />
      )}
    </svg>
  );
}

function Bands({ layout, prefix }: { layout: StreamLayout; prefix: string }) {
  return layout.bands.map((band) => (
    <rect
      key={band.stage}
      x={band.x}
      y={band.y}
      width={Math.max(1, band.width)}
      height={band.thickness}
      fill={`url(#${prefix}-${band.stage})`}
      stroke="var(--rule)"
      strokeDasharray={band.forecast ? '4 4' : undefined}
      opacity={band.forecast ? 0.6 : 1}
    />
  ));
}

/** About the width of a letter at the size of the labels. */
const LETTER = 8.4;

/** Drawn last, so that nothing lies over the words. */
function BandLabels({ layout, words }: { layout: StreamLayout; words: StreamWords['stages'] }) {
  return layout.bands.map((band) => {
    const label = band.alive === null || band.forecast ? words[band.stage] : `${words[band.stage]} ${band.alive}`;
    const width = label.length * LETTER + 12;
    if (band.width < width + 4) return null;
    const middle = band.x + band.width / 2;
    return (
      <g key={band.stage}>
        <rect
          x={middle - width / 2}
          y={layout.middle - 12}
          width={width}
          height="24"
          rx="3"
          fill="var(--surface)"
          stroke="var(--rule)"
          strokeWidth="0.6"
        />
        <text x={middle} y={layout.middle + 5} textAnchor="middle" fontSize="15" fill="var(--ink)" fontWeight="600">
          {label}
        </text>
      </g>
    );
  });
}

function Wedge({ layout: { wedge, middle, fullThickness } }: { layout: StreamLayout }) {
  const half = fullThickness / 2 + 8;
  return (
    <path
      d={`M${wedge.from} ${middle}L${wedge.middle} ${middle - half}L${wedge.to} ${middle}L${wedge.middle} ${middle + half}Z`}
      fill="var(--paper)"
      fillOpacity="0.55"
      stroke="var(--ink)"
      strokeWidth="1.2"
      strokeDasharray="2 3"
    />
  );
}

function Threads({ layout }: { layout: StreamLayout }) {
  return layout.threads.map((thread) => (
    <g key={thread.box}>
      <path d={`M${thread.x} ${thread.y}H${thread.endX - 18}`} stroke="var(--ink)" strokeWidth="1" opacity="0.75" />
      <text x={thread.endX - 12} y={thread.y + 4} fontSize="12" fill="var(--ink)" textAnchor="middle">
        {resultSign(thread.result)}
        <title>{thread.box}</title>
      </text>
    </g>
  ));
}

function Gates({ layout, prefix, text }: { layout: StreamLayout; prefix: string; text: string }) {
  return layout.gates.map((gate) => (
    <g key={gate.step}>
      <rect
        x={gate.x}
        y={24}
        width={gate.width}
        height={layout.height - 62}
        fill={`url(#${prefix}-hands-off)`}
        opacity="0.5"
      />
      <rect
        x={gate.x}
        y={24}
        width={gate.width}
        height={layout.height - 62}
        fill="none"
        stroke="var(--hands-off)"
        strokeWidth="1.4"
      />
      <text
        x={gate.label.x}
        y={17}
        textAnchor={gate.label.anchor}
        fontSize="14"
        fontWeight="700"
        fill="var(--hands-off)"
      >
        {text}
      </text>
    </g>
  ));
}

function Axis({ layout, today }: { layout: StreamLayout; today: string }) {
  const days = useDays();
  const base = layout.height - 34;
  return (
    <g fontSize="13" fill="var(--soft-ink)">
      <path d={`M0 ${base}H${layout.width}`} stroke="var(--rule)" />
      {layout.days.map((day) =>
        day.labelled ? (
          <g key={day.on}>
            <path d={`M${day.x} ${base}v5`} stroke="var(--rule)" />
            <text x={day.x + 2} y={base + 16}>
              {dayNumber(day.on)}
            </text>
            <text x={day.x + 2} y={base + 30}>
              {days.letters(day.on)}
            </text>
          </g>
        ) : null,
      )}
      {layout.todayX === null ? null : (
        <g>
          <path d={`M${layout.todayX} 20V${base + 4}`} stroke="var(--ink)" strokeWidth="2.4" />
          <text
            x={layout.todayX}
            y={12}
            textAnchor={layout.todayX > layout.width - 60 ? 'end' : 'middle'}
            fill="var(--ink)"
            fontWeight="700"
          >
            {today}
          </text>
        </g>
      )}
    </g>
  );
}

function Marks({ layout }: { layout: StreamLayout }) {
  const { batches } = useWords();
  return (
    <g>
      {layout.flags.map((flag) => (
        <path
          key={flag.step}
          d={`M${flag.x} ${layout.height - 35}v-16l9 4l-9 4`}
          fill={flag.done ? 'var(--ink)' : 'var(--paper)'}
          stroke="var(--ink)"
          strokeWidth="1.2"
        />
      ))}
      {layout.losses.map((loss) => (
        <text
          key={loss.x}
          x={loss.x + (loss.anchor === 'end' ? -4 : 4)}
          y={loss.y}
          textAnchor={loss.anchor}
          fontSize="14"
          fill="var(--bad)"
          fontWeight="600"
        >
          {loss.cells > 0 && <title>{batches.stream.lostWhy[loss.stage]}</title>}
          {loss.cells > 0 && batches.stream.lost(loss.cells)}
          {loss.setAside > 0 && (
            <tspan fill="var(--soft-ink)" fontWeight="400">
              {loss.cells > 0 && ' '}
              {batches.stream.setAside(loss.setAside)}
            </tspan>
          )}
        </text>
      ))}
    </g>
  );
}

function StreamTable({ stream }: { stream: StreamPicture }) {
  const { batches } = useWords();
  const days = useDays();
  const words = batches.stream;
  const lossText = (stage: StreamStage) => {
    const cells = lossAt(stage)?.cells ?? 0;
    return cells > 0 ? `${cells}, ${words.lostWhy[stage]}` : '';
  };
  const lossAt = (stage: string) => stream.losses.find((loss) => loss.stage === stage);
  return (
    <DataTable
      caption={words.title}
      rows={stream.bands}
      rowKey={(band) => band.stage}
      columns={[
        { key: 'stage', title: words.columns.stage, cell: (band) => words.stages[band.stage], head: true },
        { key: 'from', title: words.columns.from, cell: (band) => days.short(band.from) },
        { key: 'to', title: words.columns.to, cell: (band) => days.short(band.to) },
        { key: 'alive', title: words.columns.alive, cell: (band) => aliveText(band, words), numeric: true },
        { key: 'basis', title: words.columns.basis, cell: (band) => (band.forecast ? words.forecast : words.counted) },
        { key: 'lost', title: words.columns.lost, cell: (band) => lossText(band.stage) },
        {
          key: 'set-aside',
          title: words.columns.setAside,
          cell: (band) => lossAt(band.stage)?.setAside || '',
          numeric: true,
        },
      ]}
    />
  );
}
