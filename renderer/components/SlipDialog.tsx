import { Button, Dialog } from '@mui/material';
import { useId } from 'react';
import type { SlipView, SlipViewLine, SlipWindow } from '../../shared/contract/slip.ts';
import type { CalendarFactView } from '../../shared/contract/timetable.ts';
import { shortCodes } from '../../shared/kernel/box-codes.ts';
import { DataTable } from './DataTable.tsx';
import { useDays, useWords } from './words.ts';

interface SlipDialogProps {
  readonly batch: string;
  readonly view: SlipView;
  readonly busy: boolean;
  readonly onConfirm: () => void;
  readonly onBack: () => void;
}

/** Was and becomes for each step, done ones locked, and what was printed that would be wrong: save or go back. */
export function SlipDialog({ batch, view, busy, onConfirm, onBack }: SlipDialogProps) {
  const { slip: words } = useWords();
  const id = useId();
  const moved = view.lines.filter(({ changed, locked }) => changed && !locked).length;
  return (
    <Dialog open onClose={onBack} fullWidth maxWidth="md" aria-labelledby={id}>
      <div className="slip">
        <h2 id={id}>{words.title(batch)}</h2>
        <p>{moved === 0 ? words.nothing : words.moves(moved)}</p>
        {view.labelsOutOfDate.length > 0 ? (
          <p className="line-notice">{words.labels(view.labelsOutOfDate.length, shortCodes(view.labelsOutOfDate))}</p>
        ) : null}
        {view.calendarEntriesOutOfDate > 0 ? (
          <p className="line-notice">{words.entries(view.calendarEntriesOutOfDate)}</p>
        ) : null}
        {view.contradictions.map(({ one, other }) => (
          <p key={`${one.kind} ${one.on} ${other.kind} ${other.on}`} className="line-notice">
            {words.contradiction} <FactText fact={one} />; <FactText fact={other} />.
          </p>
        ))}
        <SlipLines lines={view.lines} />
        <div className="acts">
          <Button variant="contained" autoFocus disabled={busy} onClick={onConfirm}>
            {words.confirm}
          </Button>
          <Button variant="outlined" onClick={onBack}>
            {words.back}
          </Button>
        </div>
      </div>
    </Dialog>
  );
}

function SlipLines({ lines }: { lines: readonly SlipViewLine[] }) {
  const { slip: words, stepTitles } = useWords();
  return (
    <DataTable
      caption={words.columns.becomes}
      rows={lines}
      rowKey={(line) => line.step}
      quiet={(line) => !line.changed}
      columns={[
        { key: 'step', title: words.columns.step, head: true, cell: (line) => stepTitles[line.step] },
        { key: 'was', title: words.columns.was, cell: (line) => <WindowText window={line.was} /> },
        { key: 'becomes', title: words.columns.becomes, cell: (line) => <Becomes line={line} /> },
      ]}
    />
  );
}

function Becomes({ line }: { line: SlipViewLine }) {
  const { slip: words } = useWords();
  if (line.locked) return <span className="soft">✓ {words.done}</span>;
  if (!line.changed) return <span className="soft">{words.stays}</span>;
  return (
    <strong>
      → <WindowText window={line.becomes} /> {line.was && line.becomes ? words.by(line.movesBy) : ''}
    </strong>
  );
}

function WindowText({ window }: { window: SlipWindow | null }) {
  const { slip: words, batches } = useWords();
  const days = useDays();
  if (!window) return <>{words.none}</>;
  const { earliest, expected, latest } = window;
  return (
    <>
      <span className="nowrap">{days.short(expected)}</span>
      {earliest === latest ? null : (
        <span className="soft small"> ({batches.one.window(days.short(earliest), days.short(latest))})</span>
      )}
    </>
  );
}

function FactText({ fact }: { fact: CalendarFactView }) {
  const { slip: words, sightings, stepTitles } = useWords();
  const on = useDays().short(fact.on);
  if (fact.kind === 'step') return <>{words.fact.step(stepTitles[fact.step], on)}</>;
  if (fact.kind === 'larva-age') return <>{words.fact.age(fact.fromHours, fact.toHours, on)}</>;
  return <>{words.fact.seen(sightings[fact.what].name, on)}</>;
}
