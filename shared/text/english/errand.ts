import type { ErrandLook } from '../../contract/errand.ts';

/** Boxes handed to someone else for their looks, and the looks coming back. */
export const errandWords = {
  title: 'Someone else looks',
  line: 'Hand out some boxes as a small file. Whoever has Ripecell opens it, types the looks into it and gives the file back; only what they saw comes in, and never twice. Notes about hives and batches stay here.',
  boxes: 'Which to hand out',
  boxesHint: 'K01-K18, or K01, K03',
  make: 'Save the errand',
  fileName: (workbook: string, day: string) => `Errand for ${workbook} ${day}`,
  saved: (path: string) => `The errand was saved as ${path}.`,
  notSaved: 'The errand could not be saved there. Choose another place.',
  downloaded: 'The errand lies in the downloads of your browser.',
  file: 'An errand that came back',
  from: (from: string, day: string) => `Handed out from “${from}” on ${day}.`,
  nothingNew: 'Nothing new in it: all of it is here already.',
  columns: { box: 'Box', on: 'Day', theirs: 'Seen there', mine: 'Here', stands: 'What happens' },
  standing: {
    new: 'comes in',
    same: 'is here already',
    doubtful: 'two different looks: choose',
    'no-such-box': 'stays out: this box is not in your workbook',
    'number-taken': 'stays out: the queen’s number is taken here; type it by hand',
  } satisfies Record<ErrandLook['standing'], string>,
  theirs: 'take theirs',
  keep: 'keep mine',
  chooseFor: (box: string, day: string) => `Which look at ${box} on ${day} is to stand`,
  none: 'not looked',
  strength: (n: number) => `strength ${n}`,
  food: (n: number) => `food ${n}`,
  queen: (number: string) => `queen ${number}`,
  take: (n: number) => (n === 1 ? 'Take 1 look in' : `Take ${n} looks in`),
  taken: (added: number, changed: number) =>
    `${added === 1 ? '1 look was' : `${added} looks were`} taken in${changed > 0 ? `, ${changed} of yours written over` : ''}.`,
} as const;
