import { useState } from 'react';
import type { SlipChange, SlipView } from '../../shared/contract/slip.ts';
import { ask } from './client.ts';
import { type ChangeState, useChange } from './hooks.ts';

/** A change that is waiting for the person's word, and what it would move. */
export interface AskedSlip {
  readonly slip: SlipChange;
  readonly view: SlipView;
}

/**
 * Marks, moves or notes something on a batch, or takes that back. What moves other days is shown first and saved only when the person
 * confirms; what moves none is saved at once.
 */
export function useSlip() {
  const [asked, setAsked] = useState<AskedSlip | null>(null);
  const preview = useChange((slip: SlipChange) => ask.batches.previewSlip.query(slip), false);
  const save = useChange(send);
  const propose = async (slip: SlipChange): Promise<void> => {
    save.clear();
    const view = await preview.run(slip);
    if (view === null) return;
    if (view.otherStepsMoved > 0 || slip.kind === 'move' || view.contradictions.length > 0) setAsked({ slip, view });
    else await save.run(slip);
  };
  const confirm = async (): Promise<void> => {
    if (asked) await save.run(asked.slip);
    setAsked(null);
  };
  const state: ChangeState = {
    ...save.state,
    refusal: preview.state.refusal ?? save.state.refusal,
    notReached: preview.state.notReached || save.state.notReached,
    busy: preview.state.busy || save.state.busy,
  };
  return { asked, propose, confirm, back: () => setAsked(null), state };
}

function send(slip: SlipChange) {
  if (slip.kind === 'mark') return ask.batches.markStep.mutate(slip.change);
  if (slip.kind === 'unmark') return ask.batches.unmarkStep.mutate(slip.change);
  if (slip.kind === 'unsee') return ask.batches.removeObservation.mutate(slip.change);
  if (slip.kind === 'warmth') return ask.batches.setWarmth.mutate(slip.change);
  return slip.kind === 'move'
    ? ask.batches.moveStep.mutate(slip.change)
    : ask.batches.recordObservation.mutate(slip.change);
}
