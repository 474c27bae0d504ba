import { useState } from 'react';
import { ask } from '../../client/client.ts';
import { usePaper } from '../../client/use-paper.ts';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { PaperActs } from '../../components/PaperActs.tsx';
import { FIRST_PAPER, PaperChoice } from '../../components/PaperChoice.tsx';
import { useWords } from '../../components/words.ts';

type Wish = Parameters<typeof ask.print.printTimetable.mutate>[0];

/** The timetable on paper: with dates, for any year, or with gaps to fill in; in large print upright and without picture. */
export function Handout({ chosen }: { chosen: Omit<Wish, 'variant' | 'paper' | 'large'> }) {
  const { handout, print } = useWords();
  const [variant, setVariant] = useState<Wish['variant']>('dates');
  const [wish, setWish] = useState(FIRST_PAPER);
  const paper = usePaper(ask.print.printTimetable.mutate, print);
  const input = { ...chosen, variant, ...wish };
  return (
    <div className="stack" style={{ marginBottom: 18 }}>
      <div className="row acts">
        <ChoiceField
          label={handout.variant}
          value={variant}
          choices={(['dates', 'day-numbers', 'gaps'] as const).map((value) => ({
            value,
            text: handout.variants[value],
          }))}
          onChange={setVariant}
        />
        <PaperChoice wish={wish} onChange={setWish} />
      </div>
      <PaperActs save={handout.save} paper={paper} input={input} />
    </div>
  );
}
