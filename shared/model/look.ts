import { z } from 'zod';
import { IdField, IsoDayField, NoteField } from './fields.ts';

/** What one look into a mating box showed. `not-looked` is a value of its own: neither success nor failure. */
export const LOOK_RESULTS = [
  'laying',
  'proved',
  'virgin',
  'cell',
  'none',
  'drone-layer',
  'gone',
  'queen',
  'out',
  'cell-failed',
  'not-looked',
] as const;
export type LookResult = (typeof LOOK_RESULTS)[number];

/** Strength and food on five steps, 1 = hardly any to 5 = plenty. */
const FiveSteps = z.int().min(1).max(5).nullable();

export const BoxLook = z.object({
  id: IdField,
  boxId: IdField,
  /** The cell or queen looked for; null when the box held none. */
  placementId: IdField.nullable(),
  lookedOn: IsoDayField,
  result: z.enum(LOOK_RESULTS),
  strength: FiveSteps,
  food: FiveSteps,
  note: NoteField.nullable(),
});
export type BoxLook = z.infer<typeof BoxLook>;

export const HiveLook = z.object({
  id: IdField,
  colonyId: IdField,
  lookedOn: IsoDayField,
  strength: FiveSteps,
  food: FiveSteps,
  note: NoteField,
});
export type HiveLook = z.infer<typeof HiveLook>;
