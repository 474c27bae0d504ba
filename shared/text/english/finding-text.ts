import type { StageComparison } from '../../contract/season.ts';
import type { Widened } from '../translation.ts';
import type { season } from './season.ts';

/** What can be said of the leading two groups: how sure it is, and what follows. */
export interface FindingSentences {
  readonly certainty: string;
  readonly rest: readonly string[];
}

/**
 * The finding of one stage in sentences, for the window and for paper.
 * @param name what a group is called, by its id.
 */
export function findingSentences(
  { finding, ofHundred }: Widened<typeof season>,
  { stage, groups }: Pick<StageComparison, 'stage' | 'groups'>,
  lead: NonNullable<StageComparison['lead']>,
  name: (groupId: string) => string,
): FindingSentences {
  const [better, other] = [name(lead.better), name(lead.other)];
  const { mean, lower, upper } = lead.difference;
  const hundred = (share: number) => 100 * share;
  const alone = groups.filter((group) => group.batches === 1 && [lead.better, lead.other].includes(group.groupId));
  return {
    certainty: finding.certainty[lead.certainty](better, other),
    rest: [
      ...(lead.certainty === 'cannot-tell' ? [] : [finding.bet(Math.round(20 * lead.probability))]),
      ...(lead.isBest && groups.length > 2 ? [finding.best(better)] : []),
      lead.noMatter
        ? finding.noMatter
        : finding.difference(hundred(mean), hundred(lower), hundred(upper), ofHundred[stage]),
      ...(lead.swing === null ? [] : [finding.swing(better, hundred(lead.swing))]),
      finding.next[stage](
        finding.inBatches(better, lead.next.batches),
        lead.next.of,
        finding.span(lead.next.lower, lead.next.upper),
      ),
      ...alone.map((group) => finding.guesswork(name(group.groupId))),
    ],
  };
}
