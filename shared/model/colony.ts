import { z } from 'zod';
import { CodeField, IdField, IsoDayField, NameField, NoteField, SeasonField } from './fields.ts';

/** A full-sized hive of bees, whatever it is used for. On screen: a hive. */
export const Colony = z.object({
  id: IdField,
  code: CodeField,
  name: NameField.nullable(),
  yardId: IdField.nullable(),
  /** Where it stands, in the person's words: "row 2, place 4". */
  place: z.string().trim().max(60).nullable(),
  /** The line its queen comes from, in the person's words. */
  motherLine: NameField.nullable(),
  note: NoteField.nullable(),
  /** The day it ceased to be a colony of its own; null while it lives. */
  endedOn: IsoDayField.nullable(),
});
export type Colony = z.infer<typeof Colony>;

export const ROLES = ['breeder', 'builder', 'drone-mother', 'other'] as const;
export type Role = (typeof ROLES)[number];

/** What a colony is used for in one season; it may have several roles, and others next year. */
export const ColonyRole = z.object({
  id: IdField,
  colonyId: IdField,
  season: SeasonField,
  role: z.enum(ROLES),
});
export type ColonyRole = z.infer<typeof ColonyRole>;
