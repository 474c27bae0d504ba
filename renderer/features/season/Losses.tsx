import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { LossTable } from '../../components/LossTable.tsx';
import { Section } from '../../components/Section.tsx';
import { useWords } from '../../components/words.ts';
import type { Asked } from './weighed.ts';

/** Why cells and queens of the batches that are compared were lost, as far as somebody said so. */
export function Losses({ asked: { allowingFor: _beside, ahead: _later, ...plain } }: { asked: Asked }) {
  const { losses: words } = useWords();
  const answer = useAnswer(['losses', plain], () => ask.season.getLosses.query(plain));
  if (!answer.data || answer.data.stages.length === 0) return null;
  return (
    <Section title={words.seasonTitle}>
      <LossTable caption={words.seasonTitle} stages={answer.data.stages} />
      <p className="soft small" style={{ marginTop: 8 }}>
        {words.seasonLine}
      </p>
    </Section>
  );
}
