import { Button } from '@mui/material';
import type { BatchDetail } from '../../../shared/contract/batches.ts';
import type { CalendarFactView } from '../../../shared/contract/timetable.ts';
import { ask } from '../../client/client.ts';
import { useChange } from '../../client/hooks.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { useWords } from '../../components/words.ts';
import { useFactText } from './fact-text.ts';

/** Facts that cannot both be true, side by side; the person says which one does not hold. */
export function Contradictions({ batch }: { batch: BatchDetail }) {
  const { one: words } = useWords().batches;
  const factText = useFactText(batch);
  return (
    <>
      {batch.timetable.contradictions.map(({ one, other }) => (
        <div key={`${factText(one)} ${factText(other)}`} role="status">
          <p className="line-notice">
            {words.contradiction} {factText(one)}; {factText(other)}.
          </p>
          <div className="acts">
            {[one, other].map((fact) => (
              <NotSo key={factText(fact)} batch={batch} fact={fact} />
            ))}
          </div>
        </div>
      ))}
    </>
  );
}

/** Takes back one of the two: a sighting, or the mark of a step. The larvae's age stands in the batch itself. */
function NotSo({ batch, fact }: { batch: BatchDetail; fact: CalendarFactView }) {
  const { one: words } = useWords().batches;
  const factText = useFactText(batch);
  const remove = useChange(ask.batches.removeObservation.mutate);
  const unmark = useChange(ask.batches.unmarkStep.mutate);
  const isMarked =
    fact.kind === 'step' && batch.timetable.lines.some(({ step, doneOn }) => step === fact.step && doneOn !== null);
  if (fact.kind !== 'seen' && !isMarked) return null;
  const takeBack = () =>
    fact.kind === 'seen'
      ? void remove.run({ batchId: batch.id, observationId: fact.id })
      : fact.kind === 'step' && void unmark.run({ batchId: batch.id, step: fact.step });
  return (
    <>
      <Button size="small" variant="outlined" onClick={takeBack}>
        {words.notSo(factText(fact))}
      </Button>
      <ChangeLines {...remove.state} />
      <ChangeLines {...unmark.state} />
    </>
  );
}
