import { useState } from 'react';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { useNotedPaper } from '../../client/use-noted-paper.ts';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { PaperForm } from '../../components/PaperForm.tsx';
import { useToday, useWords } from '../../components/words.ts';

const YEARS_BACK = 10;

/** Hives, moves, treatments and queens of a year, for an inspector. */
export function InspectorPages() {
  const { hivePapers, print } = useWords();
  const words = hivePapers.inspector;
  const hives = useAnswer(['hives'], () => ask.hives.listHives.query());
  const now = Number(useToday().slice(0, 4));
  const [year, setYear] = useState(String(now));
  const [yardId, setYardId] = useState('');
  const chosen = { year: Number(year), yardId: yardId || null };
  const of = { paper: 'inspector-pages', ...chosen } as const;
  const paper = useNotedPaper(ask.hives.printInspectorPages.mutate, print, of);
  return (
    <PaperForm
      title={words.section}
      explain={words.explain}
      save={words.save}
      paper={paper}
      input={(wish) => ({ ...chosen, ...wish })}
    >
      <ChoiceField
        label={words.yard}
        value={yardId}
        choices={[
          { value: '', text: words.allYards },
          ...(hives.data?.yards ?? []).map(({ id, name }) => ({ value: id, text: name })),
        ]}
        onChange={setYardId}
      />
      <ChoiceField
        label={words.year}
        value={year}
        choices={Array.from({ length: YEARS_BACK }, (_, index) => String(now - index)).map((value) => ({
          value,
          text: value,
        }))}
        onChange={setYear}
      />
    </PaperForm>
  );
}
