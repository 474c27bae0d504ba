import type { MethodStep, MethodView } from '../../../shared/contract/methods.ts';
import type { MethodCopy } from '../../../shared/model/method-copy.ts';
import type { Step } from '../../../shared/model/step.ts';

export const WHICH = ['earliest', 'expected', 'latest'] as const;
export type Which = (typeof WHICH)[number];

/** The days of each step as typed, and what the person calls it and adds to it. */
export type TypedStep = Readonly<Record<Which | 'title' | 'note', string>>;
export type TypedDays = Readonly<Record<string, TypedStep>>;

export const typedDays = (steps: readonly MethodStep[]): TypedDays =>
  Object.fromEntries(
    steps.map(({ step, own, words }) => [
      step,
      {
        earliest: String(own.earliest),
        expected: String(own.expected),
        latest: String(own.latest),
        title: words.title ?? '',
        note: words.note ?? '',
      },
    ]),
  );

export const isDayNumber = (text: string): boolean => /^-?\d{1,2}$/.test(text.trim());

/** The copy that holds just the steps that differ from what is built in; null while a field is no number. */
export function methodCopy(view: MethodView, typed: TypedDays, name: string, id: string): MethodCopy | null {
  const rows = view.steps.map((step) => ({ step, days: typed[step.step] }));
  if (rows.some(({ days }) => !days || WHICH.some((which) => !isDayNumber(days[which])))) return null;
  const changes = rows.flatMap(({ step, days }) => {
    if (!days) return [];
    const sameDays = WHICH.every((which) => Number(days[which]) === step.builtIn[which]);
    const [title, note] = [days.title.trim() || null, days.note.trim() || null];
    if (sameDays && title === null && note === null) return [];
    const day = (which: Which) => (sameDays ? null : Number(days[which]));
    return [
      {
        step: step.step as Step,
        earliestDay: day('earliest'),
        expectedDay: day('expected'),
        latestDay: day('latest'),
        title,
        note,
      },
    ];
  });
  return { id, origin: view.method, name, changes };
}

/** Steps of a copy that are not as built in: other days, another name, a note. */
export const differingSteps = (steps: readonly MethodStep[]): readonly MethodStep[] =>
  steps.filter(({ changed, words }) => changed || words.title !== null || words.note !== null);
