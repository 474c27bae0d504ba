import type { SafetyCopy } from '../../shared/contract/copies.ts';
import { dayOfIso } from '../../shared/kernel/day.ts';

/** What rotation looks at. */
export type RotatedCopy = Pick<SafetyCopy, 'at' | 'purpose' | 'checked'>;

/**
 * How many copies stay of each kind, counted over days, weeks and months that have a copy at all, so that a winter
 * without typing drops nothing. Common practice, no source.
 */
const KEPT = { newest: 10, days: 14, weeks: 8, months: 24, ofEachOccasion: 3 } as const;
/** Copies made before something that could go wrong. */
const OCCASIONS: readonly SafetyCopy['purpose'][] = ['before-format', 'before-import', 'before-restore'];

/**
 * The copies that may go, of all copies of one workbook in one place. The newest checked copy always stays, and so
 * does every copy the person made by hand. Days are those of the instants in UTC: they only sort copies into bins.
 */
export function copiesToDrop<Copy extends RotatedCopy>(copies: readonly Copy[]): readonly Copy[] {
  const newestFirst = [...copies].sort((one, other) => (one.at < other.at ? 1 : one.at > other.at ? -1 : 0));
  const sound = newestFirst.filter(({ checked }) => checked);
  const kept = new Set<Copy>([
    ...newestFirst.slice(0, KEPT.newest),
    ...sound.slice(0, 1),
    ...newestFirst.filter(({ purpose }) => purpose === 'by-hand'),
    ...firstOfEach(sound, dayOf, KEPT.days),
    ...firstOfEach(sound, weekOf, KEPT.weeks),
    ...firstOfEach(sound, monthOf, KEPT.months),
    ...OCCASIONS.flatMap((occasion) =>
      newestFirst.filter(({ purpose }) => purpose === occasion).slice(0, KEPT.ofEachOccasion),
    ),
  ]);
  return newestFirst.filter((copy) => !kept.has(copy));
}

/** The newest copy of each of the last so many bins. */
function firstOfEach<Copy extends RotatedCopy>(
  newestFirst: readonly Copy[],
  binOf: (copy: RotatedCopy) => string | number,
  most: number,
): readonly Copy[] {
  const first = new Map<string | number, Copy>();
  for (const copy of newestFirst) {
    const bin = binOf(copy);
    if (!first.has(bin)) first.set(bin, copy);
  }
  return [...first.values()].slice(0, most);
}

const dayOf = ({ at }: RotatedCopy): string => at.slice(0, 10);
const monthOf = ({ at }: RotatedCopy): string => at.slice(0, 7);
/** Weeks from Monday; day 0 (1 January 1970) was a Thursday. */
const weekOf = (copy: RotatedCopy): number => Math.floor((dayOfIso(dayOf(copy)) + 3) / 7);
