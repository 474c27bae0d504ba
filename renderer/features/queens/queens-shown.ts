import type { QueenLine } from '../../../shared/contract/queens.ts';
import { unreachable } from '../../../shared/kernel/unreachable.ts';
import type { QueenPlace } from '../../../shared/model/queen.ts';

/** Of those still here, some are promised; the others are free to give. */
export const QUEEN_CHOICES = ['all', 'here', 'free', 'promised', 'gone'] as const;
export type QueenChoice = (typeof QUEEN_CHOICES)[number];

export interface QueenFilter {
  readonly place: QueenChoice;
  /** A mother line, or empty for every line. */
  readonly line: string;
}

const HERE: readonly QueenPlace[] = ['in-box', 'caged', 'in-hive'];
const WITH_OTHERS: readonly QueenPlace[] = ['given', 'sold'];

export const isHere = (place: QueenPlace): boolean => HERE.includes(place);

/** The queens that a filter of the register leaves. */
export function queensShown(lines: readonly QueenLine[], { place, line }: QueenFilter): readonly QueenLine[] {
  return lines.filter((one) => isChosen(one, place)).filter(({ queen }) => line === '' || queen.motherLine === line);
}

function isChosen({ queen, promise }: QueenLine, choice: QueenChoice): boolean {
  switch (choice) {
    case 'all':
      return true;
    case 'here':
      return isHere(queen.place);
    case 'free':
      return isHere(queen.place) && promise === null;
    case 'promised':
      return promise !== null;
    case 'gone':
      return WITH_OTHERS.includes(queen.place);
    default:
      return unreachable(choice);
  }
}
