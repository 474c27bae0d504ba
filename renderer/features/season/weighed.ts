import {
  type CompareFactor,
  type RateStage,
  type StageComparison,
  WEIGHED_STAGES,
} from '../../../shared/contract/season.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';

interface Asked {
  readonly factor: CompareFactor;
  readonly season: number | null;
  readonly leaveOutPractice: boolean;
  readonly stage: RateStage;
}

/** The chosen stage weighed group against group; null while it is being reckoned, and for the whole way. */
export function useWeighed({ stage, ...asked }: Asked): StageComparison | null {
  const weighable = WEIGHED_STAGES.find((one) => one === stage);
  const input = { ...asked, stage: weighable ?? 'take' };
  const answer = useAnswer(['weighed', input], () => ask.season.compareStage.query(input), weighable !== undefined);
  return weighable && answer.data?.stage === weighable && !answer.isPlaceholderData ? answer.data : null;
}
