import { useState } from 'react';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { useNotedPaper } from '../../client/use-noted-paper.ts';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { PaperActs } from '../../components/PaperActs.tsx';
import { FIRST_PAPER, PaperChoice } from '../../components/PaperChoice.tsx';
import { PrintedBefore } from '../../components/PrintedPapers.tsx';
import { Section } from '../../components/Section.tsx';
import { useWords } from '../../components/words.ts';

const ALL_YEARS = { factor: 'method', and: null, season: null, leaveOutPractice: false } as const;

/** The season on paper. */
export function Report() {
  const { seasonReport: words, print } = useWords();
  const answer = useAnswer(['compare', ALL_YEARS], () => ask.season.compareSeason.query(ALL_YEARS));
  const [chosen, setChosen] = useState<string | null>(null);
  const [wish, setWish] = useState(FIRST_PAPER);
  const seasons = answer.data?.seasons ?? [];
  const season = chosen ?? String(seasons[0] ?? '');
  const of = { paper: 'season-report', season: Number(season) } as const;
  const paper = useNotedPaper(ask.season.printSeasonReport.mutate, print, of);
  if (!answer.data) return null;
  if (seasons.length === 0) return <p>{words.none}</p>;
  const input = { season: Number(season), ...wish };
  return (
    <Section title={words.button}>
      <p className="soft">{words.explain}</p>
      <div className="row acts">
        <ChoiceField
          label={words.which}
          value={season}
          choices={seasons.map((one) => ({ value: String(one), text: String(one) }))}
          onChange={setChosen}
        />
        <PaperChoice wish={wish} onChange={setWish} />
      </div>
      <PrintedBefore of={of} />
      <PaperActs save={words.save} paper={paper} input={input} making={words.making} />
    </Section>
  );
}
