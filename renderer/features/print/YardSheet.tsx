import { useState } from 'react';
import type { YardSheetLines } from '../../../shared/contract/print.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { usePaper } from '../../client/use-paper.ts';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { PaperActs } from '../../components/PaperActs.tsx';
import { FIRST_PAPER, PaperChoice } from '../../components/PaperChoice.tsx';
import { Section } from '../../components/Section.tsx';
import { useWords } from '../../components/words.ts';

const LINES: readonly YardSheetLines[] = ['walk', 'hives', 'blank'];

/** The sheet for a walk along hives and mating boxes, to be filled in by pencil. */
export function YardSheet() {
  const { print: words, yardSheet } = useWords();
  const hives = useAnswer(['hives'], () => ask.hives.listHives.query());
  const [yardId, setYardId] = useState('');
  const [lines, setLines] = useState<YardSheetLines>('walk');
  const [columns, setColumns] = useState<'one' | 'two'>('one');
  const [wish, setWish] = useState(FIRST_PAPER);
  const [week, setWeek] = useState(true);
  const [squaredBack, setSquaredBack] = useState(false);
  const paper = usePaper(ask.print.printYardSheet.mutate, words);
  const yards = (hives.data?.yards ?? []).map((yard) => ({ value: yard.id, text: yard.name }));
  const side = { columns: columns === 'two' ? 2 : 1, squaredBack } as const;
  return (
    <Section title={yardSheet.title}>
      <p className="soft">{yardSheet.explain[lines]}</p>
      <div className="row acts">
        <ChoiceField
          label={yardSheet.lines}
          value={lines}
          choices={LINES.map((value) => ({ value, text: yardSheet.linesFor[value] }))}
          onChange={setLines}
        />
        {lines === 'blank' ? null : (
          <ChoiceField
            label={yardSheet.yard}
            value={yardId}
            choices={[{ value: '', text: yardSheet.allYards }, ...yards]}
            onChange={setYardId}
          />
        )}
        {wish.large ? null : (
          <ChoiceField
            label={yardSheet.columns}
            value={columns}
            choices={(['one', 'two'] as const).map((value) => ({ value, text: yardSheet.columnsOf[value] }))}
            onChange={setColumns}
          />
        )}
        <PaperChoice wish={wish} onChange={setWish} />
      </div>
      <div className="row acts">
        {lines === 'blank' ? null : (
          <label className="check" style={{ minHeight: 40 }}>
            <input type="checkbox" checked={week} onChange={(event) => setWeek(event.target.checked)} />
            {yardSheet.weekWish}
          </label>
        )}
        <label className="check" style={{ minHeight: 40 }}>
          <input type="checkbox" checked={squaredBack} onChange={(event) => setSquaredBack(event.target.checked)} />
          {yardSheet.squaredBack}
        </label>
      </div>
      {squaredBack ? <p className="soft">{yardSheet.squaredHint}</p> : null}
      <PaperActs
        save={yardSheet.save}
        paper={paper}
        input={{ yardId: yardId || null, walkOn: null, week, lines, ...side, ...wish }}
      />
    </Section>
  );
}
