import type { BatchLine } from '../../shared/contract/batches.ts';
import type { BoxLine } from '../../shared/contract/boxes.ts';
import type { HiveLine } from '../../shared/contract/hives.ts';
import type { QueenLine } from '../../shared/contract/queens.ts';
import type { Words } from '../../shared/text/english/english.ts';

export interface Place {
  readonly name: string;
  readonly kind: string;
  readonly address: string;
}

export interface Haystack {
  readonly words: Words;
  readonly batches: readonly BatchLine[];
  readonly hives: readonly HiveLine[];
  readonly boxes: readonly BoxLine[];
  readonly queens: readonly QueenLine[];
}

const MOST_SHOWN = 9;

/** Places whose name holds the typed letters; names that begin with them come first. Without letters, the pages. */
export function findPlaces(typed: string, { words, batches, hives, boxes, queens }: Haystack): readonly Place[] {
  const pages = Object.entries(words.frame.places).map(([key, name]) => ({ name, kind: '', address: `/${key}` }));
  const all: readonly Place[] = [
    ...pages,
    ...batches.map((one) => ({ name: one.code, kind: words.methods[one.method].name, address: `/batches/${one.id}` })),
    ...hives.map((one) => ({
      name: [one.code, one.name].filter(Boolean).join(' '),
      kind: words.frame.places.hives,
      address: `/hives/${one.id}`,
    })),
    ...boxes.map((one) => ({ name: one.code, kind: words.boxes.states[one.state], address: `/boxes?box=${one.id}` })),
    ...queens.map((one) => ({
      name: one.queen.number,
      kind: words.frame.places.queens,
      address: `/queens?queen=${one.queen.id}`,
    })),
  ];
  const letters = typed.trim().toLowerCase();
  if (letters === '') return pages.slice(0, MOST_SHOWN);
  const rank = (place: Place) => (place.name.toLowerCase().startsWith(letters) ? 0 : 1);
  return all
    .filter((place) => place.name.toLowerCase().includes(letters))
    .toSorted((a, b) => rank(a) - rank(b))
    .slice(0, MOST_SHOWN);
}
