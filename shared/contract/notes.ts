import { z } from 'zod';
import type { IsoDay } from '../kernel/day.ts';

/** Words to look for in all notes; each must be found, in any order. */
export const ListNotes = z.object({ text: z.string().trim().max(80) });

/** What kind of note it is; its name is in shared/text. */
export const NOTE_KINDS = [
  'batch',
  'lesson',
  'step',
  'moved-step',
  'dropped-step',
  'sighting',
  'box',
  'box-look',
  'hive',
  'hive-look',
  'yard',
  'queen',
  'queen-move',
  'feedback',
  'promise',
  'check',
  'score',
  'test',
  'feeding',
  'treatment',
  'hive-move',
] as const;
export type NoteKind = (typeof NOTE_KINDS)[number];

export interface NoteLine {
  readonly kind: NoteKind;
  /** What the note is about; its page, or null for a yard. */
  readonly about: { readonly kind: 'batch' | 'box' | 'hive' | 'queen'; readonly id: string } | null;
  readonly name: string;
  /** The day it speaks of; null where it has none. */
  readonly on: IsoDay | null;
  readonly text: string;
}

export interface NotesFound {
  /** Newest first, those without a day last; at most some hundred. */
  readonly notes: readonly NoteLine[];
  /** How many there are in all. */
  readonly total: number;
}
