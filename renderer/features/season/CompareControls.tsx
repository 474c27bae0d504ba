import {
  COMPARE_FACTORS,
  type CompareFactor,
  MOST_AHEAD,
  RATE_STAGES,
  type RateStage,
} from '../../../shared/contract/season.ts';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { useWords } from '../../components/words.ts';
import type { Asked } from './weighed.ts';

/** Methods on all seasons, allowing for the builder: what most people ask first. */
export const FIRST_ASKED: Asked = {
  factor: 'method',
  and: null,
  allowingFor: 'builder',
  season: null,
  leaveOutPractice: true,
  ahead: 1,
};

/** Of two factors that are often mixed up with each other, the other one. */
const USUAL_OTHER: Partial<Record<CompareFactor, CompareFactor>> = {
  method: 'builder',
  builder: 'method',
  season: 'method',
};

interface ControlsProps {
  readonly asked: Asked;
  readonly onAsk: (asked: Asked) => void;
  readonly stage: RateStage;
  readonly onStage: (stage: RateStage) => void;
  readonly seasons: readonly number[];
}

/** What to compare, by what, in which season. */
export function CompareControls({ asked, onAsk, stage, onStage, seasons }: ControlsProps) {
  const { season: words } = useWords();
  const factorChoices = (except: CompareFactor | null, nothing: string) => [
    { value: '' as const, text: nothing },
    ...COMPARE_FACTORS.filter((value) => value !== except).map((value) => ({ value, text: words.factors[value] })),
  ];
  return (
    <div className="row" style={{ marginBottom: 22 }}>
      <ChoiceField
        label={words.by}
        firstFocus
        value={asked.factor}
        choices={COMPARE_FACTORS.map((value) => ({ value, text: words.factors[value] }))}
        onChange={(factor) => onAsk({ ...asked, factor, and: null, allowingFor: USUAL_OTHER[factor] ?? null })}
      />
      <ChoiceField
        label={words.and}
        value={asked.and ?? ''}
        choices={factorChoices(asked.factor, words.oneFactor)}
        onChange={(and) => onAsk({ ...asked, and: and === '' ? null : and })}
      />
      <ChoiceField
        label={words.allowingFor}
        value={asked.allowingFor ?? ''}
        choices={factorChoices(asked.factor, words.allowNothing)}
        onChange={(other) => onAsk({ ...asked, allowingFor: other === '' ? null : other })}
      />
      <ChoiceField
        label={words.in}
        value={asked.season === null ? '' : String(asked.season)}
        choices={[
          { value: '', text: words.allSeasons },
          ...seasons.map((year) => ({ value: String(year), text: String(year) })),
        ]}
        onChange={(value) => onAsk({ ...asked, season: value === '' ? null : Number(value) })}
      />
      <ChoiceField
        label={words.stage}
        value={stage}
        choices={RATE_STAGES.map((value) => ({
          value,
          text: `${words.stages[value].name}: ${words.stages[value].line}`,
        }))}
        onChange={onStage}
      />
      <ChoiceField
        label={words.ahead}
        value={String(asked.ahead)}
        choices={Array.from({ length: MOST_AHEAD }, (_, index) => ({
          value: String(index + 1),
          text: words.aheadOf(index + 1),
        }))}
        onChange={(ahead) => onAsk({ ...asked, ahead: Number(ahead) })}
      />
      <label className="check" style={{ minHeight: 40 }}>
        <input
          type="checkbox"
          checked={asked.leaveOutPractice}
          onChange={(event) => onAsk({ ...asked, leaveOutPractice: event.target.checked })}
        />
        {words.leaveOut}
      </label>
    </div>
  );
}
