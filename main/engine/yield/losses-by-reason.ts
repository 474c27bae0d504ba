import { LOSS_STAGES, type Loss, type LossStage, type StageLoss } from '../../../shared/model/loss.ts';
import type { BatchTally } from '../../../shared/model/tally.ts';

/** What of a batch the losses are reckoned from. */
export interface LossFacts {
  readonly tally: BatchTally;
  readonly losses: readonly Pick<Loss, 'stage' | 'reason' | 'cells'>[];
  /** Emerged queens last seen as drone-layers. */
  readonly droneLayers: number;
}

/**
 * Losses of one or more batches, stage by stage, with what is known of their reasons. A stage of which both ends were not
 * counted is in no sum; nothing lost is no line, unless reasons were typed before a count was corrected. Cells removed on purpose and boxes not looked into are no losses, as in
 * the stage rates. What has no reason stays unknown: it is not spread over those that have one. Our own definition.
 */
export function lossesByReason(batches: readonly LossFacts[]): readonly StageLoss[] {
  return LOSS_STAGES.flatMap((stage): readonly StageLoss[] => {
    const counted = batches.flatMap((batch) => {
      const ends = endsOf(stage, batch.tally);
      return ends ? [{ batch, ...ends }] : [];
    });
    const lost = sum(counted.map((one) => one.of - one.left));
    const each = counted.map(({ batch, of, left }) => {
      const typed = batch.losses.filter((loss) => loss.stage === stage);
      const droneLayers = stage === 'proved' ? Math.min(batch.droneLayers, of - left) : 0;
      return { typed, droneLayers, without: of - left - droneLayers - sum(typed.map(({ cells }) => cells)) };
    });
    if (lost === 0 && each.every(({ typed }) => typed.length === 0)) return [];
    return [
      {
        stage,
        of: sum(counted.map((one) => one.of)),
        lost,
        reasons: reasonsOf(each.flatMap(({ typed }) => typed)),
        droneLayers: sum(each.map((one) => one.droneLayers)),
        unknown: sum(each.map(({ without }) => Math.max(0, without))),
        tooMany: sum(each.map(({ without }) => Math.max(0, -without))),
      },
    ];
  });
}

/** How many entered a stage and how many came out of it; null = not counted. */
function endsOf(stage: LossStage, tally: BatchTally): { readonly of: number; readonly left: number } | null {
  const [of, left] = {
    taken: [tally.given, tally.taken],
    sealed: [tally.enteredSealing, tally.sealed],
    emerged: [tally.emergenceKnown, tally.emerged],
    proved: [tally.matingKnown, tally.proved],
  }[stage];
  return of == null || left == null ? null : { of, left };
}

function reasonsOf(typed: LossFacts['losses']): StageLoss['reasons'] {
  const byReason = Map.groupBy(typed, ({ reason }) => reason);
  return [...byReason]
    .map(([reason, rows]) => ({ reason, cells: sum(rows.map(({ cells }) => cells)) }))
    .toSorted((a, b) => b.cells - a.cells);
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);
