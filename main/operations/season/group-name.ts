import type { CompareRow, GroupPart } from '../../../shared/contract/season.ts';
import type { Words } from '../../../shared/text/english/english.ts';

/** What a group of a comparison is called on paper and in files. */
export const groupName = ({ parts }: CompareRow, words: Words): string =>
  parts.map((part) => partName(part, words)).join(', ');

function partName({ factor, id, label }: GroupPart, words: Words): string {
  if (id === 'unknown') return words.season.unknown;
  const named: Readonly<Record<string, { readonly name: string }>> =
    factor === 'method' ? words.methods : factor === 'boxType' ? words.boxTypes : {};
  return named[label]?.name ?? label;
}
