import type { Day } from '../../../shared/kernel/day.ts';
import type { DatedStep, Step } from '../../../shared/model/step.ts';
import { isOpenJob } from './open-steps.ts';

export interface WorkOfDay {
  readonly on: Day;
  /** Planning minutes of all open jobs. */
  readonly minutes: number;
  /** What to bring, in order of first need, and how many jobs ask for it. */
  readonly materials: readonly { readonly material: string; readonly jobs: number }[];
  readonly steps: readonly Step[];
}

/** Minutes and materials of the open jobs expected on each day from `from` to `to`; days without jobs are left out. */
export function sumWork(steps: readonly DatedStep[], from: Day, to: Day): readonly WorkOfDay[] {
  const open = steps.filter((step) => isOpenJob(step) && step.expected >= from && step.expected <= to);
  const days = [...new Set(open.map((step) => step.expected))].toSorted((a, b) => a - b);
  return days.map((on) =>
    workOf(
      on,
      open.filter((step) => step.expected === on),
    ),
  );
}

/** What the given jobs need together. */
export function sumMaterials(steps: readonly Pick<DatedStep, 'materials'>[]): WorkOfDay['materials'] {
  const jobsByMaterial = new Map<string, number>();
  for (const material of steps.flatMap((step) => step.materials)) {
    jobsByMaterial.set(material, (jobsByMaterial.get(material) ?? 0) + 1);
  }
  return [...jobsByMaterial].map(([material, jobs]) => ({ material, jobs }));
}

function workOf(on: Day, steps: readonly DatedStep[]): WorkOfDay {
  return {
    on,
    minutes: steps.reduce((sum, step) => sum + (step.minutes ?? 0), 0),
    materials: sumMaterials(steps),
    steps: steps.map((step) => step.step),
  };
}
