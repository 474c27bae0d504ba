import type { QueenLine } from '../../../shared/contract/queens.ts';
import type { QueenPlace } from '../../../shared/model/queen.ts';

export interface QueenFilter {
  readonly place: 'all' | 'here' | 'gone';
  /** A mother line, or empty for every line. */
  readonly line: string;
}

const HERE: readonly QueenPlace[] = ['in-box', 'caged', 'in-hive'];
const WITH_OTHERS: readonly QueenPlace[] = ['given', 'sold'];

export const isHere = (place: QueenPlace): boolean => HERE.includes(place);

/** The queens that a filter of the register leaves. */
export function queensShown(lines: readonly QueenLine[], { place, line }: QueenFilter): readonly QueenLine[] {
  return lines
    .filter(({ queen }) => place === 'all' || (place === 'here' ? HERE : WITH_OTHERS).includes(queen.place))
    .filter(({ queen }) => line === '' || queen.motherLine === line);
}
