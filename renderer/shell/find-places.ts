import type { BatchLine } from '../../shared/contract/batches.ts';
import type { BoxLine } from '../../shared/contract/boxes.ts';
import type { HiveLine } from '../../shared/contract/hives.ts';
import type { QueenLine } from '../../shared/contract/queens.ts';
import { COMMANDS, type Command } from '../../shared/contract/shell.ts';
import type { Words } from '../../shared/text/english/english.ts';

/** Somewhere to go, or something to do. */
export interface Place {
  readonly name: string;
  readonly kind: string;
  readonly to: { readonly address: string } | { readonly command: Command };
}

export interface Haystack {
  readonly words: Words;
  readonly batches: readonly BatchLine[];
  readonly hives: readonly HiveLine[];
  readonly boxes: readonly BoxLine[];
  readonly queens: readonly QueenLine[];
}

const MOST_SHOWN = 9;

/** Pages by their name, the evening's own pages among them. */
function pagesOf({ frame, today, hives, stock, notes }: Words): readonly Place[] {
  const places = Object.entries(frame.places).map(([key, name]) => ({ name, kind: '', to: { address: `/${key}` } }));
  return [
    ...places,
    { name: today.steps.title, kind: frame.places.today, to: { address: '/today/steps' } },
    { name: hives.sheet.title, kind: frame.places.hives, to: { address: '/hives/looks' } },
    { name: stock.title, kind: frame.places.hives, to: { address: '/hives/stock' } },
    { name: notes.title, kind: '', to: { address: '/notes' } },
  ];
}

/** Everything of the menu that is no page itself. */
const commandsOf = ({ menu, frame }: Words): readonly Place[] =>
  COMMANDS.filter((command) => !command.startsWith('go-') && command !== 'help').map((command) => ({
    name: menu[command as keyof typeof menu] ?? command,
    kind: frame.command,
    to: { command },
  }));

const recordsOf = ({ words, batches, hives, boxes, queens }: Haystack): readonly Place[] => [
  ...batches.map((one) => ({
    name: one.code,
    kind: words.methods[one.method].name,
    to: { address: `/batches/${one.id}` },
  })),
  ...hives.map((one) => ({
    name: [one.code, one.name].filter(Boolean).join(' '),
    kind: words.frame.places.hives,
    to: { address: `/hives/${one.id}` },
  })),
  ...boxes.map((one) => ({
    name: one.code,
    kind: words.boxes.states[one.state],
    to: { address: `/boxes?box=${one.id}` },
  })),
  ...queens.map((one) => ({
    name: one.queen.number,
    kind: words.frame.places.queens,
    to: { address: `/queens/${one.queen.id}` },
  })),
];

/** 0 is the very name, then names that begin so, then words in a name that begin so, then the rest. */
function rankOf(name: string, letters: string): number {
  const lower = name.toLowerCase();
  if (lower === letters) return 0;
  if (lower.startsWith(letters)) return 1;
  return lower.includes(` ${letters}`) ? 2 : 3;
}

/** Places and commands whose name holds the typed letters. Without letters, the pages. */
export function findPlaces(typed: string, haystack: Haystack): readonly Place[] {
  const letters = typed.trim().toLowerCase();
  const pages = pagesOf(haystack.words);
  if (letters === '') return pages.slice(0, MOST_SHOWN);
  return [...pages, ...recordsOf(haystack), ...commandsOf(haystack.words)]
    .filter((place) => place.name.toLowerCase().includes(letters))
    .toSorted((a, b) => rankOf(a.name, letters) - rankOf(b.name, letters))
    .slice(0, MOST_SHOWN);
}

/** The last thing offered for any letters: look for them in the notes. */
export const notesPlace = (typed: string, { notes, frame }: Words): Place => ({
  name: notes.searchFor(typed.trim()),
  kind: frame.search,
  to: { address: `/notes?text=${encodeURIComponent(typed.trim())}` },
});
