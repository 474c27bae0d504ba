import type { RateStage, StageComparison } from '../../../shared/contract/season.ts';
import { findingSentences } from '../../../shared/text/english/finding-text.ts';
import { perCent } from '../../../shared/text/share-text.ts';
import type { CompareDot } from '../../charts/compare-layout.ts';
import { useWords } from '../../components/words.ts';
import type { Asked } from './weighed.ts';
import { useSettling } from './weighed.ts';

interface FindingProps {
  readonly dots: readonly CompareDot[];
  readonly stage: RateStage;
  readonly asked: Asked;
  readonly weighed: StageComparison | null;
}

/** What can be said, in words: "cannot be told apart" as readily as "very likely". */
export function FindingText({ dots, stage, asked, weighed }: FindingProps) {
  const { season: words } = useWords();
  const { finding } = words;
  const [only, second] = dots;
  if (!only) return <>{finding.nothing}</>;
  if (!second)
    return <>{finding.one(only.label, words.stages[stage].name, perCent(only.percent / 100), only.batches)}</>;
  if (stage === 'through') return <>{finding.wholeWay}</>;
  if (!weighed?.lead) return <>{finding.weighing}</>;
  return <Lead dots={dots} asked={asked} weighed={weighed} lead={weighed.lead} />;
}

interface LeadProps {
  readonly dots: readonly CompareDot[];
  readonly asked: Asked;
  readonly weighed: StageComparison;
  readonly lead: NonNullable<StageComparison['lead']>;
}

function Lead({ dots, asked, weighed, lead }: LeadProps) {
  const { season: words } = useWords();
  const { finding } = words;
  const settling = useSettling(
    { ...asked, stage: weighed.stage },
    lead.certainty === 'cannot-tell' || lead.probability < 0.95,
  );
  const name = (groupId: string) => dots.find((dot) => dot.groupId === groupId)?.label ?? '';
  const { certainty, rest } = findingSentences(words, weighed, lead, name);
  return (
    <>
      <strong>{certainty}</strong> {rest.map((sentence) => `${sentence} `)}
      {settling
        ? `${settling.more === null ? finding.settleNever(settling.most) : finding.settle(settling.more)} `
        : ''}
      <AllowedText lead={lead} name={name} />
    </>
  );
}

/** The same two allowing for another factor: beside the plain answer, never instead of it. */
function AllowedText({ lead, name }: { lead: LeadProps['lead']; name: (groupId: string) => string }) {
  const { season: words } = useWords();
  const { finding } = words;
  const { allowing } = lead;
  if (!allowing) return null;
  const [factor, many] = [words.factors[allowing.factor], words.manyOf[allowing.factor]];
  if (allowing.kind !== 'weighed')
    return allowing.kind === 'too-few' ? (
      <>{finding.tooFew(factor)} </>
    ) : (
      <>{finding.notConnected(name(lead.better), name(lead.other), many)} </>
    );
  const worse = allowing.better === lead.better ? lead.other : lead.better;
  const sentence = finding.certainty[allowing.certainty](name(allowing.better), name(worse));
  return (
    <>
      <strong>{finding.allowing(factor, sentence)}</strong> {allowing.disagrees ? `${finding.disagrees(many)} ` : ''}
    </>
  );
}
