import type { BatchStart } from '../../../shared/contract/batches.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { ClashLines } from '../../components/ClashLines.tsx';
import { Section } from '../../components/Section.tsx';
import { useWords } from '../../components/words.ts';

/** What stands in the way of a running batch; nothing at all when nothing does. */
export function BatchClashes({ batchId }: { batchId: string }) {
  const { clashes: words } = useWords();
  const answer = useAnswer(['clashes', batchId], () => ask.batches.listClashes.query({ batchId }));
  if (!answer.data || answer.data.clashes.length === 0) return null;
  return (
    <Section title={words.one}>
      <ClashLines list={answer.data} own={batchId} />
    </Section>
  );
}

/** What would stand in the way of the batch in the form, asked anew with every change of it. */
export function ClashesPreview({ input }: { input: BatchStart }) {
  const { clashes: words } = useWords();
  const answer = useAnswer(['clash-preview', JSON.stringify(input)], () => ask.batches.previewClashes.query(input));
  if (!answer.data?.ok) return null;
  return (
    <Section title={words.ahead}>
      <div role="status">
        {answer.data.value.clashes.length === 0 ? (
          <p className="soft">{words.none}</p>
        ) : (
          <ClashLines list={answer.data.value} />
        )}
      </div>
    </Section>
  );
}
