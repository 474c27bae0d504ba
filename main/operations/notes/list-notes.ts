import type { z } from 'zod';
import type { ListNotes, NotesFound } from '../../../shared/contract/notes.ts';
import { holdsWords, wordsOf } from '../../engine/notes/match-words.ts';
import type { Desk } from '../operation.ts';
import { allNotes } from './all-notes.ts';

const MOST_SHOWN = 200;

/** Notes that hold every word asked for, in the note or in the name of what it is about; newest first. */
export function listNotes({ workbook: { tables } }: Desk, { text }: z.infer<typeof ListNotes>): NotesFound {
  const words = wordsOf(text);
  const found = allNotes(tables)
    .filter((note) => holdsWords(`${note.name} ${note.text}`, words))
    .toSorted((a, b) => (b.on ?? '').localeCompare(a.on ?? ''));
  return { notes: found.slice(0, MOST_SHOWN), total: found.length };
}
