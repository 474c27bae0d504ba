import type { RateStage, StageComparison } from '../../../shared/contract/season.ts';
import { perCent } from '../../../shared/text/share-text.ts';
import type { CompareDot } from '../../charts/compare-layout.ts';
import { useWords } from '../../components/words.ts';

/** What can be said, in words: "cannot be told apart" as readily as "very likely". */
export function FindingText({
  dots,
  stage,
  weighed,
}: {
  dots: readonly CompareDot[];
  stage: RateStage;
  weighed: StageComparison | null;
}) {
  const { season: words } = useWords();
  const { finding } = words;
  const [only, second] = dots;
  if (!only) return <>{finding.nothing}</>;
  if (!second)
    return <>{finding.one(only.label, words.stages[stage].name, perCent(only.percent / 100), only.batches)}</>;
  if (stage === 'through') return <>{finding.wholeWay}</>;
  if (!weighed?.lead) return <>{finding.weighing}</>;
  const { better, other, certainty, probability, isBest } = weighed.lead;
  const name = (groupId: string) => dots.find((dot) => dot.groupId === groupId)?.label ?? '';
  return (
    <>
      <strong>{finding.certainty[certainty](name(better), name(other))}</strong>{' '}
      {certainty === 'cannot-tell' ? '' : `${finding.bet(Math.round(20 * probability))} `}
      {isBest && dots.length > 2 ? `${finding.best(name(better))} ` : ''}
    </>
  );
}
