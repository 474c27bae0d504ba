import { BOX_STEPS } from '../../../shared/biology/box-steps.ts';
import { BUILDER_STEPS } from '../../../shared/biology/builder-steps.ts';
import { type MethodTable, methodTable } from '../../../shared/biology/method-steps.ts';
import type { StepRow } from '../../../shared/biology/step-row.ts';
import {
  BOX_TYPES,
  type BoxType,
  BUILDER_TYPES,
  type BuilderType,
  COMBS,
  type Comb,
  METHODS,
  type Method,
} from '../../../shared/model/method.ts';
import { STEPS } from '../../../shared/model/step.ts';
import type { StepChange } from '../../../shared/model/timetable.ts';

/** Which tables make up a timetable. */
export interface PlanChoice {
  readonly method: Method;
  readonly comb: Comb | null;
  readonly builderType: BuilderType;
  readonly boxType: BoxType | null;
}

/** All step rows of one choice of method, builder and box, in their natural order, before any date is known. */
export interface Plan {
  readonly table: MethodTable;
  readonly rows: readonly StepRow[];
  /** A copied method's own days for the window of emergence, from day 0; null when it follows biology. */
  readonly changes: ReadonlyMap<string, StepChange>;
}

const NO_CHANGES: ReadonlyMap<string, StepChange> = new Map();
const places = (names: readonly string[]): ReadonlyMap<string | null, number> =>
  new Map([null, ...names].map((name, place) => [name, place]));
const METHOD_PLACES = places(METHODS);
const COMB_PLACES = places(COMBS);
const BUILDER_PLACES = places(BUILDER_TYPES);
const BOX_PLACES = places(BOX_TYPES);
const plans: Plan[] = [];

/** A number for each choice; a text key made anew for every batch would cost more than dating its steps. */
function numberOf({ method, comb, builderType, boxType }: PlanChoice): number {
  const methodPlace = METHOD_PLACES.get(method) ?? 0;
  const combPlace = COMB_PLACES.get(comb) ?? 0;
  const builderPlace = BUILDER_PLACES.get(builderType) ?? 0;
  const boxPlace = BOX_PLACES.get(boxType) ?? 0;
  return (
    ((methodPlace * COMB_PLACES.size + combPlace) * BUILDER_PLACES.size + builderPlace) * BOX_PLACES.size + boxPlace
  );
}

/** Joins the tables of method, builder and box. Kept after the first time: there are under a thousand choices. */
export function compilePlan(choice: PlanChoice): Plan {
  const number = numberOf(choice);
  const known = plans[number];
  if (known) return known;
  const table = methodTable(choice.method, choice.comb);
  const plan = { table, rows: joinRows(table, choice), changes: NO_CHANGES };
  plans[number] = plan;
  return plan;
}

/** The plan with a person's own days put in; steps the plan does not hold are left aside. */
export function withChanges(plan: Plan, changes: readonly StepChange[]): Plan {
  if (changes.length === 0) return plan;
  return { ...plan, changes: new Map(changes.map((change) => [change.step, change])) };
}

function joinRows(table: MethodTable, { builderType, boxType }: PlanChoice): readonly StepRow[] {
  // A method that feeds its breeder early does not feed again later because of its builder.
  const ofMethod = new Set(table.head.map((row) => row.step));
  const rows = [
    ...table.head,
    ...(table.takesBuilder ? BUILDER_STEPS[builderType].filter((row) => !ofMethod.has(row.step)) : []),
    ...table.tail,
    ...(table.takesBoxes ? BOX_STEPS[boxType ?? 'unknown'] : []),
  ];
  return rows.toSorted((a, b) => STEPS.indexOf(a.step) - STEPS.indexOf(b.step));
}
