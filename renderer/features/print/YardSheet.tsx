import { useEffect, useRef, useState } from 'react';
import type { YardSheetLines } from '../../../shared/contract/print.ts';
import { shortCodes } from '../../../shared/kernel/box-codes.ts';
import { ask } from '../../client/client.ts';
import { useAnswer, useAskAgain } from '../../client/hooks.ts';
import { usePaper } from '../../client/use-paper.ts';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { PaperActs } from '../../components/PaperActs.tsx';
import { FIRST_PAPER, PaperChoice, type PaperWish } from '../../components/PaperChoice.tsx';
import { Section } from '../../components/Section.tsx';
import { useDays, useWords } from '../../components/words.ts';

type Input = Parameters<typeof ask.print.printYardSheet.mutate>[0];

/** What was chosen for the sheet. */
interface Chosen extends PaperWish {
  readonly yardId: string;
  readonly lines: YardSheetLines;
  readonly columns: 1 | 2;
  readonly week: boolean;
  readonly squaredBack: boolean;
}

const LINES: readonly YardSheetLines[] = ['walk', 'hives', 'blank'];
const FIRST: Chosen = { ...FIRST_PAPER, yardId: '', lines: 'walk', columns: 1, week: true, squaredBack: false };

/** The sheet for a walk along hives and mating boxes, to be filled in by pencil. */
export function YardSheet({ focus }: { focus: boolean }) {
  const { yardSheet } = useWords();
  const [chosen, setChosen] = useState(FIRST);
  const input: Input = { ...chosen, yardId: chosen.yardId || null, walkOn: null };
  const paper = useYardSheet(input);
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (!focus) return;
    place.current?.scrollIntoView({ block: 'start' });
    place.current?.querySelector('select')?.focus({ preventScroll: true });
  }, [focus]);
  const choose = (change: Partial<Chosen>) => setChosen({ ...chosen, ...change });
  return (
    <Section title={yardSheet.title}>
      <p className="soft">{yardSheet.explain[chosen.lines]}</p>
      <div ref={place}>
        <Choices chosen={chosen} choose={choose} />
      </div>
      <div className="row acts">
        {chosen.lines === 'blank' ? null : (
          <Check text={yardSheet.weekWish} checked={chosen.week} onChange={(week) => choose({ week })} />
        )}
        <Check
          text={yardSheet.squaredBack}
          checked={chosen.squaredBack}
          onChange={(squaredBack) => choose({ squaredBack })}
        />
      </div>
      {chosen.squaredBack ? <p className="soft">{yardSheet.squaredHint}</p> : null}
      <StaleSheets />
      <PaperActs save={yardSheet.save} paper={paper} input={input} />
    </Section>
  );
}

/** A sheet that is only looked at is not kept as printed; one that is saved or opened after the look is. */
function useYardSheet(input: Input) {
  const { print: words } = useWords();
  const askAgain = useAskAgain();
  const print = async (asked: Input) => {
    const made = await ask.print.printYardSheet.mutate(asked);
    if (!asked.look) askAgain('stale-sheets', 'history');
    return made;
  };
  const paper = usePaper(print, words);
  const noted = (act: () => void) => () => {
    act();
    void print(input);
  };
  const { shown } = paper;
  return {
    ...paper,
    look: (asked: Input) => paper.look({ ...asked, look: true }),
    shown: shown && { ...shown, save: noted(shown.save), open: shown.open && noted(shown.open) },
  };
}

function Choices({ chosen, choose }: { chosen: Chosen; choose: (change: Partial<Chosen>) => void }) {
  const { yardSheet } = useWords();
  const hives = useAnswer(['hives'], () => ask.hives.listHives.query());
  const yards = (hives.data?.yards ?? []).map((yard) => ({ value: yard.id, text: yard.name }));
  return (
    <div className="row acts">
      <ChoiceField
        label={yardSheet.lines}
        value={chosen.lines}
        choices={LINES.map((value) => ({ value, text: yardSheet.linesFor[value] }))}
        onChange={(lines) => choose({ lines })}
      />
      {chosen.lines === 'blank' ? null : (
        <ChoiceField
          label={yardSheet.yard}
          value={chosen.yardId}
          choices={[{ value: '', text: yardSheet.allYards }, ...yards]}
          onChange={(yardId) => choose({ yardId })}
        />
      )}
      {chosen.large ? null : (
        <ChoiceField
          label={yardSheet.columns}
          value={chosen.columns === 2 ? 'two' : 'one'}
          choices={(['one', 'two'] as const).map((value) => ({ value, text: yardSheet.columnsOf[value] }))}
          onChange={(columns) => choose({ columns: columns === 'two' ? 2 : 1 })}
        />
      )}
      <PaperChoice wish={chosen} onChange={({ paper, large }) => choose({ paper, large })} />
    </div>
  );
}

function Check({ text, checked, onChange }: { text: string; checked: boolean; onChange: (checked: boolean) => void }) {
  return (
    <label className="check" style={{ minHeight: 40 }}>
      <input type="checkbox" checked={checked} onChange={(event) => onChange(event.target.checked)} />
      {text}
    </label>
  );
}

/** Printed sheets for today or later that no longer say what is right. */
function StaleSheets() {
  const { yardSheet } = useWords();
  const days = useDays();
  const { data } = useAnswer(['stale-sheets'], () => ask.print.listStaleSheets.query());
  if (!data || data.length === 0) return null;
  return (
    <div className="line-notice" role="status">
      {data.map(({ walkOn, yard, lines, printedOn, changed, leaveAlone }) => (
        <p key={`${walkOn} ${yard} ${lines}`}>
          {yardSheet.stale({
            day: days.short(walkOn),
            yard: yard ?? yardSheet.allYards,
            printed: days.short(printedOn),
            codes: changed.length === 0 ? '' : shortCodes(changed),
            leaveAlone,
          })}
        </p>
      ))}
    </div>
  );
}
