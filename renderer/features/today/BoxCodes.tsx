import { Fragment } from 'react';
import { shortCodes } from '../../../shared/kernel/box-codes.ts';

/** K01–K09, K12: each code that is written leads to the card of its box. */
export function BoxCodes({ codes }: { codes: readonly string[] }) {
  return shortCodes(codes)
    .split(/(–|, )/)
    .map((part, index) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: parts of one text, which stand where they stand
      <Fragment key={index}>{codes.includes(part) ? <a href={`#/boxes?box=${part}`}>{part}</a> : part}</Fragment>
    ));
}
