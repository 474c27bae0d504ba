import { useDeferredValue, useState } from 'react';
import type { PlanChoiceInput, PlanForm } from '../../../shared/contract/forecast.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { HowManyForm } from './HowManyForm.tsx';
import { PlanAnswerView } from './PlanAnswerView.tsx';

/** "I want ten laying queens, nine times in ten": how many larvae, builders and boxes that takes. */
export function HowMany() {
  const form = useAnswer(['plan-form'], () => ask.season.getPlanForm.query());
  return form.data ? <Planner form={form.data} /> : null;
}

function Planner({ form }: { form: PlanForm }) {
  const [choice, setChoice] = useState<PlanChoiceInput>(() => firstChoice(form));
  const asked = useDeferredValue(choice);
  const answer = useAnswer(['plan', asked], ({ signal }) => ask.season.previewPlan.query(asked, { signal }));
  return (
    <div className="columns wide-right">
      <HowManyForm form={form} choice={choice} onChange={setChoice} stages={answer.data?.stages ?? []} />
      <PlanAnswerView choice={choice} answer={answer.data ?? null} waiting={answer.isPlaceholderData} />
    </div>
  );
}

const firstChoice = (form: PlanForm): PlanChoiceInput => ({
  wanted: 10,
  chance: 0.9,
  method: form.methods[0]?.id ?? null,
  batches: null,
  cellsPerBuilder: form.cellsPerBuilder,
  boxes: null,
  larvaeEach: null,
  whatIf: { take: null, sealing: null, emergence: null, mating: null },
  leaveOutPractice: true,
});
