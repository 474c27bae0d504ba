import {
  type ComparedBatch,
  type CompareFactor,
  type RateStage,
  type Settling,
  type StageComparison,
  WEIGHED_STAGES,
  type WeighedStage,
} from '../../../shared/contract/season.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';

/** What the person chose to compare. */
export interface Asked {
  readonly factor: CompareFactor;
  readonly and: CompareFactor | null;
  readonly allowingFor: CompareFactor | null;
  readonly season: number | null;
  readonly leaveOutPractice: boolean;
  /** Next batches of the best to look ahead. */
  readonly ahead: number;
}

/** The batches behind the comparison; none while they are being read. */
export function useBatchesBehind({ allowingFor: _beside, ahead: _later, ...plain }: Asked): readonly ComparedBatch[] {
  const answer = useAnswer(['behind', plain], () => ask.season.listComparedBatches.query(plain));
  return answer.isPlaceholderData ? [] : (answer.data ?? []);
}

/** The chosen stage weighed group against group; null while it is being reckoned, and for the whole way. */
export function useWeighed({ stage, ...asked }: Asked & { readonly stage: RateStage }): StageComparison | null {
  const weighable = WEIGHED_STAGES.find((one) => one === stage);
  const input = { ...asked, stage: weighable ?? 'take' };
  const answer = useAnswer(
    ['weighed', input],
    ({ signal }) => ask.season.compareStage.query(input, { signal }),
    weighable !== undefined,
  );
  return weighable && answer.data?.stage === weighable && !answer.isPlaceholderData ? answer.data : null;
}

/** How many more batches would settle it; null while that is being reckoned, or where it is settled. */
export function useSettling(asked: Asked & { readonly stage: WeighedStage }, open: boolean): Settling | null {
  const answer = useAnswer(
    ['settling', asked],
    ({ signal }) => ask.season.getBatchesToSettle.query(asked, { signal }),
    open,
  );
  return open && !answer.isPlaceholderData ? (answer.data ?? null) : null;
}
