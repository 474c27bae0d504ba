import type { NoteKind } from '../../contract/notes.ts';

/** Looking for a word in everything that was noted. */
export const notes = {
  title: 'Search the notes',
  word: 'Words to look for',
  hint: 'Each word must be in the note, in any order',
  searchFor: (text: string) => `“${text}” in the notes`,
  found: (n: number) => (n === 0 ? 'Nothing was noted with these words.' : n === 1 ? '1 note' : `${n} notes`),
  shown: (shown: number, n: number) => `The newest ${shown} of ${n}. Add a word to find fewer.`,
  ask: 'Type a word. Notes of batches, boxes, hives and queens, lessons, looks, treatments and what was told of queens are looked through.',
  noDay: '',
  kinds: {
    batch: 'batch',
    lesson: 'lesson',
    step: 'step done',
    'moved-step': 'day moved',
    sighting: 'seen',
    box: 'box',
    'box-look': 'look into the box',
    hive: 'hive',
    'hive-look': 'look into the hive',
    yard: 'yard',
    queen: 'queen',
    'queen-move': 'where she went',
    feedback: 'told of her',
    check: 'check',
    score: 'score',
    test: 'test',
    treatment: 'treatment',
    'hive-move': 'moved',
  } satisfies Record<NoteKind, string>,
  columns: { about: 'About', day: 'Day', kind: 'What', text: 'Note' },
} as const;
