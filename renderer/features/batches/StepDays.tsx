import { Button } from '@mui/material';
import { useEffect, useRef, useState } from 'react';
import type { BatchDetail } from '../../../shared/contract/batches.ts';
import type { SlipChange } from '../../../shared/contract/slip.ts';
import type { TimetableLine } from '../../../shared/contract/timetable.ts';
import { addDays, dayOfIso, earlierOf, type IsoDay, isoOfDay } from '../../../shared/kernel/day.ts';
import { newId } from '../../client/hooks.ts';
import { DayField } from '../../components/DayField.tsx';
import { DropForm } from '../../components/DropForm.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useToday, useWords } from '../../components/words.ts';

interface StepDaysProps {
  readonly batch: BatchDetail;
  readonly line: TimetableLine;
  /** The person came to put the job off: the day is where typing begins. */
  readonly focus: boolean;
  readonly onSlip: (slip: SlipChange) => void;
  readonly onDrop: (reason: string) => void;
  readonly dropping: boolean;
  /** The sentence about one of its fields, when the last change was refused for it. */
  readonly problem: (...fields: readonly string[]) => string | null;
}

/** An open job was done on another day, is put on another day of its window, or will not be done. */
export function StepDays({ batch, line, focus, onSlip, onDrop, dropping, problem }: StepDaysProps) {
  const words = useWords();
  const { one } = words.batches;
  const today = useToday();
  const [doneOn, setDoneOn] = useState<IsoDay | null>(isoOfDay(earlierOf(dayOfIso(line.expected), dayOfIso(today))));
  const tomorrow = isoOfDay(addDays(dayOfIso(today), 1));
  const [movedTo, setMovedTo] = useState<IsoDay | null>(focus ? tomorrow : line.expected);
  const [reason, setReason] = useState('');
  const moving = useRef<HTMLFormElement>(null);
  useEffect(() => {
    if (!focus) return;
    moving.current?.scrollIntoView({ block: 'center' });
    moving.current?.querySelector('input')?.select();
  }, [focus]);
  const about = { id: newId(), batchId: batch.id, step: line.step };
  return (
    <div className="row">
      <form
        className="stack"
        style={{ flex: '1 1 220px' }}
        onSubmit={(event) => {
          event.preventDefault();
          if (doneOn) onSlip({ kind: 'mark', change: { ...about, doneOn, note: null } });
        }}
      >
        <DayField label={one.doneOnDay} value={doneOn} onChange={setDoneOn} problem={problem('doneOn', 'done')} />
        <div className="acts">
          <Button type="submit" size="small" variant="outlined" disabled={doneOn === null}>
            {one.markDoneThen}
          </Button>
        </div>
      </form>
      <form
        ref={moving}
        className="stack"
        style={{ flex: '1 1 220px' }}
        onSubmit={(event) => {
          event.preventDefault();
          if (movedTo) onSlip({ kind: 'move', change: { ...about, movedTo, reason } });
        }}
      >
        <DayField label={one.moveTo} value={movedTo} onChange={setMovedTo} problem={problem('movedTo', 'moved')} />
        <TextField label={one.moveReason} value={reason} onChange={setReason} />
        <div className="acts">
          <Button type="submit" size="small" variant="outlined" disabled={movedTo === null}>
            {one.move}
          </Button>
        </div>
      </form>
      {line.canBeDropped ? (
        <DropForm busy={dropping} onDrop={onDrop} />
      ) : (
        <p className="soft small" style={{ flex: '1 1 220px' }}>
          {words.today.dropNeeded}
        </p>
      )}
    </div>
  );
}
