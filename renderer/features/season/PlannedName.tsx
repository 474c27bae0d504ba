import { Button } from '@mui/material';
import { type FormEvent, type KeyboardEvent, useEffect, useRef, useState } from 'react';
import type { BatchLine } from '../../../shared/contract/batches.ts';
import { addDays, dayOfIso, type IsoDay, isoOfDay } from '../../../shared/kernel/day.ts';
import { newId } from '../../client/hooks.ts';
import { useSlip } from '../../client/use-slip.ts';
import { AskedSlipDialog } from '../../components/AskedSlipDialog.tsx';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { DayField } from '../../components/DayField.tsx';
import { useLetterKeys, useWords } from '../../components/words.ts';

interface PlannedNameProps {
  readonly line: BatchLine;
  readonly begins: NonNullable<BatchLine['begins']>;
}

/**
 * The name of a batch that has not begun: Shift with an arrow takes it to the day before or after, M asks for the day.
 * Alt with an arrow is the history of pages. What would move is shown first, as everywhere.
 */
export function PlannedName({ line, begins }: PlannedNameProps) {
  const { planPage: words } = useWords().season;
  const letterKeys = useLetterKeys();
  const [asking, setAsking] = useState(false);
  const slip = useSlip();
  const moveTo = (movedTo: IsoDay) => {
    setAsking(false);
    const change = { id: newId(), batchId: line.id, step: begins.step, movedTo, reason: '' };
    void slip.propose({ kind: 'move', change });
  };
  const onKeyDown = (event: KeyboardEvent<HTMLElement>) => {
    const { key, ctrlKey, altKey, metaKey, shiftKey } = event;
    if (ctrlKey || altKey || metaKey) return;
    const by = shiftKey ? ({ ArrowLeft: -1, ArrowRight: 1 } as const)[key as 'ArrowLeft' | 'ArrowRight'] : undefined;
    const asksForDay = letterKeys && !shiftKey && key.toLowerCase() === 'm';
    if (by === undefined && !asksForDay) return;
    event.preventDefault();
    if (by === undefined) setAsking(true);
    else moveTo(isoOfDay(addDays(dayOfIso(begins.on), by)));
  };
  const shortcuts = ['Shift+ArrowLeft', 'Shift+ArrowRight', letterKeys ? 'M' : ''].filter(Boolean).join(' ');
  return (
    <>
      <a href={`#/batches/${line.id}`} aria-keyshortcuts={shortcuts} onKeyDown={onKeyDown}>
        {line.code}
      </a>{' '}
      {asking ? null : (
        <Button size="small" aria-label={words.moveRead(line.code)} onClick={() => setAsking(true)}>
          {words.move}
        </Button>
      )}
      {asking ? <DayForm begins={begins} onMove={moveTo} onLeave={() => setAsking(false)} /> : null}
      <Refused state={slip.state} />
      <AskedSlipDialog batch={line.code} slip={slip} />
    </>
  );
}

function Refused({ state }: { state: ReturnType<typeof useSlip>['state'] }) {
  const problem = useProblemOf(state.refusal)('movedTo', 'moved', 'anchor');
  return problem ? (
    <p className="line-problem small" role="alert">
      {problem}
    </p>
  ) : (
    <ChangeLines {...state} />
  );
}

interface DayFormProps {
  readonly begins: PlannedNameProps['begins'];
  readonly onMove: (day: IsoDay) => void;
  readonly onLeave: () => void;
}

function DayForm({ begins, onMove, onLeave }: DayFormProps) {
  const { season, stepTitles } = useWords();
  const [day, setDay] = useState<IsoDay | null>(begins.on);
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => form.current?.querySelector('input')?.select(), []);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (day !== null && day !== begins.on) onMove(day);
  };
  return (
    <form
      ref={form}
      className="stack"
      onSubmit={submit}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onLeave();
      }}
    >
      <DayField label={stepTitles[begins.step]} value={day} onChange={setDay} />
      <div className="acts">
        <Button type="submit" size="small" variant="outlined" disabled={day === null || day === begins.on}>
          {season.planPage.move}
        </Button>
      </div>
    </form>
  );
}
