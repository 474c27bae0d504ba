import type { CompareRow, GroupPart } from '../../../shared/contract/season.ts';
import { BOX_TYPE_WORDS, METHOD_WORDS } from '../../../shared/text/english/methods.ts';
import { season as words } from '../../../shared/text/english/season.ts';

/** What a group of a comparison is called on paper and in files. */
export const groupName = ({ parts }: CompareRow): string => parts.map(partName).join(', ');

function partName({ factor, id, label }: GroupPart): string {
  if (id === 'unknown') return words.unknown;
  const named: Readonly<Record<string, { readonly name: string }>> =
    factor === 'method' ? METHOD_WORDS : factor === 'boxType' ? BOX_TYPE_WORDS : {};
  return named[label]?.name ?? label;
}
