import { useId } from 'react';
import type { PlanChoiceInput, PlanForm, PlannedStageView } from '../../../shared/contract/forecast.ts';
import { WEIGHED_STAGES, type WeighedStage } from '../../../shared/contract/season.ts';
import type { Method } from '../../../shared/model/method.ts';
import { perCent } from '../../../shared/text/share-text.ts';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { Section } from '../../components/Section.tsx';
import { useWords } from '../../components/words.ts';
import { NumberField } from './NumberField.tsx';

interface FormProps {
  readonly form: PlanForm;
  readonly choice: PlanChoiceInput;
  readonly onChange: (choice: PlanChoiceInput) => void;
  readonly stages: readonly PlannedStageView[];
}

/** How surely, as "n times in m". */
const SURELY = [
  { chance: 0.5, times: 5, of: 10 },
  { chance: 0.7, times: 7, of: 10 },
  { chance: 0.8, times: 8, of: 10 },
  { chance: 0.9, times: 9, of: 10 },
  { chance: 0.95, times: 19, of: 20 },
] as const;
const BATCHES = [1, 2, 3, 4, 5, 6] as const;

export function HowManyForm({ form, choice, onChange, stages }: FormProps) {
  const { forecast, methods } = useWords();
  const words = forecast.form;
  const change = (part: Partial<PlanChoiceInput>) => onChange({ ...choice, ...part });
  const nameOf = (label: string) => methods[label as Method]?.name ?? label;
  return (
    <Section title={words.title}>
      <div className="stack">
        <NumberField
          label={words.wanted}
          value={choice.wanted}
          most={100}
          onChange={(wanted) => change({ wanted: wanted ?? 1 })}
        />
        <ChoiceField
          label={words.surely}
          value={String(choice.chance)}
          choices={SURELY.map(({ chance, times, of }) => ({ value: String(chance), text: words.times(times, of) }))}
          onChange={(chance) => change({ chance: Number(chance) })}
        />
        <ChoiceField
          label={words.method}
          value={choice.method ?? ''}
          choices={[
            ...form.methods.map(({ id, label, batches }) => ({
              value: id,
              text: words.methodWith(nameOf(label), batches),
            })),
            { value: '', text: words.untried },
          ]}
          onChange={(method) => change({ method: method === '' ? null : method })}
        />
        <ChoiceField
          label={words.batches}
          value={choice.batches === null ? '' : String(choice.batches)}
          choices={[
            { value: '', text: words.asMany },
            ...BATCHES.map((n) => ({ value: String(n), text: words.batchesN(n) })),
          ]}
          onChange={(batches) => change({ batches: batches === '' ? null : Number(batches) })}
        />
        <NumberField
          label={words.perBuilder}
          hint={words.perBuilderHint}
          value={choice.cellsPerBuilder}
          most={200}
          onChange={(cellsPerBuilder) => change({ cellsPerBuilder })}
        />
        <NumberField
          label={words.boxes}
          hint={words.boxesHint(form.freeBoxes)}
          value={choice.boxes}
          most={400}
          onChange={(boxes) => change({ boxes })}
        />
        <NumberField
          label={words.larvae}
          hint={words.larvaeHint}
          value={choice.larvaeEach}
          most={150}
          onChange={(larvaeEach) => change({ larvaeEach })}
        />
        <fieldset className="what-if">
          <legend>{words.whatIf}</legend>
          <p className="soft small">{words.whatIfHint}</p>
          {WEIGHED_STAGES.map((stage) => (
            <WhatIf
              key={stage}
              stage={stage}
              counted={stages.find((one) => one.stage === stage)?.mean ?? null}
              tried={choice.whatIf[stage]}
              onTry={(share) => change({ whatIf: { ...choice.whatIf, [stage]: share } })}
            />
          ))}
        </fieldset>
      </div>
    </Section>
  );
}

interface WhatIfProps {
  readonly stage: WeighedStage;
  readonly counted: number | null;
  readonly tried: number | null;
  readonly onTry: (share: number | null) => void;
}

/** One stage's share, as counted or as tried. */
function WhatIf({ stage, counted, tried, onTry }: WhatIfProps) {
  const { forecast, season } = useWords();
  const words = forecast.form;
  const id = useId();
  const name = season.stages[stage].name;
  const start = Math.min(0.99, Math.max(0.05, Math.round((counted ?? 0.75) * 100) / 100));
  return (
    <div className="what-if-row">
      <label className="check">
        <input
          type="checkbox"
          checked={tried !== null}
          aria-label={words.try(name)}
          onChange={(event) => onTry(event.target.checked ? start : null)}
        />
        {name}
      </label>
      <input
        id={id}
        type="range"
        min={5}
        max={99}
        aria-label={words.share(name)}
        value={Math.round(100 * (tried ?? start))}
        disabled={tried === null}
        onChange={(event) => onTry(Number(event.target.value) / 100)}
      />
      <span className="nowrap">{tried === null ? words.asCounted : perCent(tried)}</span>
    </div>
  );
}
