import type { HiveLine } from '../../../shared/contract/hives.ts';
import type { IsoDay } from '../../../shared/kernel/day.ts';
import type { Words } from '../../../shared/text/english/english.ts';

/** Why a hive is to be left alone, each reason with its last day; none when it may be opened. */
export const leaveAloneTexts = (
  { handsOff, newQueen }: Pick<HiveLine, 'handsOff' | 'newQueen'>,
  words: Words['hives'],
  day: (on: IsoDay) => string,
): readonly string[] => [
  ...(handsOff ? [words.handsOff(day(handsOff.until), handsOff.batch)] : []),
  ...(newQueen ? [words.newQueen(day(newQueen.until), newQueen.queen)] : []),
];
