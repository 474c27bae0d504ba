import type { SafetyCopy } from '../../../shared/contract/copies.ts';

/** One line of the list: a copy, and whether it lies here, in the second place, or in both. */
export interface CopyRow extends SafetyCopy {
  readonly where: SafetyCopy['place'] | 'both';
}

/** Copies of the same name in both places are one line; a checked one stands for an unchecked one, else the one here. */
export function copyRows(copies: readonly SafetyCopy[]): readonly CopyRow[] {
  const byName = new Map<string, CopyRow>();
  for (const copy of copies) {
    const name = copy.id.slice(copy.id.indexOf(':') + 1);
    const other = byName.get(name);
    if (other === undefined) byName.set(name, { ...copy, where: copy.place });
    else byName.set(name, { ...betterOf(copy, other), where: 'both' });
  }
  return [...byName.values()];
}

function betterOf(one: SafetyCopy, other: SafetyCopy): SafetyCopy {
  if (one.checked !== other.checked) return one.checked ? one : other;
  return one.place === 'here' ? one : other;
}
