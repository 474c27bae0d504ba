import { Button } from '@mui/material';
import type { FormEvent } from 'react';
import type { BatchDetail } from '../../../shared/contract/batches.ts';
import { celsiusText, parseDegrees } from '../../../shared/text/degrees.ts';
import { useSlip } from '../../client/use-slip.ts';
import { AskedSlipDialog } from '../../components/AskedSlipDialog.tsx';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { useFollowing } from '../../components/following.ts';
import { TextField } from '../../components/TextField.tsx';
import { useTemperatureUnit, useWords } from '../../components/words.ts';

/** How warm the sealed cells are kept, when not in a hive; the days follow. */
export function Warmth({ batch }: { batch: BatchDetail }) {
  const { one } = useWords().batches;
  const unit = useTemperatureUnit();
  const { sealedCelsius } = batch.batch;
  const [typed, setTyped] = useFollowing(sealedCelsius === null ? '' : celsiusText(sealedCelsius, unit));
  const slip = useSlip();
  const problem = useProblemOf(slip.state.refusal);
  const empty = typed.trim() === '';
  const celsius = empty ? null : parseDegrees(typed, unit);
  const unreadable = !empty && celsius === null;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!unreadable) void slip.propose({ kind: 'warmth', change: { batchId: batch.id, sealedCelsius: celsius } });
  };
  return (
    <form className="stack" style={{ marginTop: 18 }} onSubmit={submit}>
      <TextField
        label={one.warmth}
        value={typed}
        onChange={setTyped}
        hint={one.warmthHint}
        problem={problem('sealedStageCelsius') ?? (unreadable ? one.warmthUnclear : null)}
      />
      <div className="acts">
        <Button type="submit" variant="outlined" disabled={slip.state.busy || unreadable || celsius === sealedCelsius}>
          {one.warmthSave}
        </Button>
      </div>
      <ChangeLines {...slip.state} ownFields={['sealedStageCelsius']} />
      <AskedSlipDialog batch={batch.code} slip={slip} />
    </form>
  );
}
