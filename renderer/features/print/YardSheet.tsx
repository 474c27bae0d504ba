import { useState } from 'react';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { usePaper } from '../../client/use-paper.ts';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { PaperActs } from '../../components/PaperActs.tsx';
import { FIRST_PAPER, PaperChoice } from '../../components/PaperChoice.tsx';
import { Section } from '../../components/Section.tsx';
import { useWords } from '../../components/words.ts';

/** The sheet for a walk along the mating boxes, to be filled in by pencil. */
export function YardSheet() {
  const { print: words, yardSheet } = useWords();
  const hives = useAnswer(['hives'], () => ask.hives.listHives.query());
  const [yardId, setYardId] = useState('');
  const [wish, setWish] = useState(FIRST_PAPER);
  const [week, setWeek] = useState(true);
  const paper = usePaper(ask.print.printYardSheet.mutate, words);
  const yards = (hives.data?.yards ?? []).map((yard) => ({ value: yard.id, text: yard.name }));
  return (
    <Section title={yardSheet.title}>
      <p className="soft">{yardSheet.explain}</p>
      <div className="row acts">
        <ChoiceField
          label={yardSheet.yard}
          value={yardId}
          choices={[{ value: '', text: yardSheet.allYards }, ...yards]}
          onChange={setYardId}
        />
        <PaperChoice wish={wish} onChange={setWish} />
        <label className="check" style={{ minHeight: 40 }}>
          <input type="checkbox" checked={week} onChange={(event) => setWeek(event.target.checked)} />
          {yardSheet.weekWish}
        </label>
      </div>
      <PaperActs save={yardSheet.save} paper={paper} input={{ yardId: yardId || null, walkOn: null, week, ...wish }} />
    </Section>
  );
}
