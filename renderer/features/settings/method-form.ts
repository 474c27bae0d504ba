import type { MethodStep, MethodView } from '../../../shared/contract/methods.ts';
import type { MethodCopy } from '../../../shared/model/method-copy.ts';
import type { Step } from '../../../shared/model/step.ts';

export const WHICH = ['earliest', 'expected', 'latest'] as const;
export type Which = (typeof WHICH)[number];

/** The days of each step as typed. */
export type TypedDays = Readonly<Record<string, Readonly<Record<Which, string>>>>;

export const typedDays = (steps: readonly MethodStep[]): TypedDays =>
  Object.fromEntries(
    steps.map(({ step, own }) => [
      step,
      { earliest: String(own.earliest), expected: String(own.expected), latest: String(own.latest) },
    ]),
  );

export const isDayNumber = (text: string): boolean => /^-?\d{1,2}$/.test(text.trim());

/** The copy that holds just the steps that differ from what is built in; null while a field is no number. */
export function methodCopy(view: MethodView, typed: TypedDays, name: string, id: string): MethodCopy | null {
  const rows = view.steps.map((step) => ({ step, days: typed[step.step] }));
  if (rows.some(({ days }) => !days || WHICH.some((which) => !isDayNumber(days[which])))) return null;
  const changes = rows.flatMap(({ step, days }) => {
    if (!days || WHICH.every((which) => Number(days[which]) === step.builtIn[which])) return [];
    return [
      {
        step: step.step as Step,
        earliestDay: Number(days.earliest),
        expectedDay: Number(days.expected),
        latestDay: Number(days.latest),
        title: null,
        note: null,
      },
    ];
  });
  return { id, origin: view.method, name, changes };
}
