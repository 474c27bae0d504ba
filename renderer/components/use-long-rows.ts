import { useWindowVirtualizer } from '@tanstack/react-virtual';
import { type RefObject, useLayoutEffect, useState } from 'react';
import type { DrawnRows } from './PlainTable.tsx';
import { usePrinting } from './use-printing.ts';

/** A list up to this long is drawn whole: then the browser's own search finds everything in it. */
export const WHOLE_LIST_ROWS = 60;
/** Drawn beyond each edge of the window, so that Tab and the arrows always find the next row. */
const ROWS_BEYOND = 4;

export interface LongRows extends DrawnRows {
  readonly scrollTo: (row: number) => void;
}

/**
 * Of a long list only the rows in the window and a few beyond are drawn; there are no pages to turn. On paper, all are.
 * @param top the element in which the first row begins.
 * @param rowHeight pixels a row has until it is measured.
 * @param wholeUpTo rows up to which all are drawn.
 */
export function useLongRows(
  count: number,
  rowHeight: number,
  top: RefObject<HTMLElement | null>,
  wholeUpTo = WHOLE_LIST_ROWS,
): LongRows {
  const whole = usePrinting() || count <= wholeUpTo;
  const [scrollMargin, setScrollMargin] = useState(0);
  const rows = useWindowVirtualizer({
    count,
    enabled: !whole,
    estimateSize: () => rowHeight,
    overscan: ROWS_BEYOND,
    scrollMargin,
    initialRect: { width: window.innerWidth, height: window.innerHeight },
  });
  // What stands above the list may grow or shrink with every drawing; setting the same number again draws nothing.
  useLayoutEffect(() => {
    if (!whole && top.current) setScrollMargin(Math.round(top.current.getBoundingClientRect().top + window.scrollY));
  });
  const scrollTo = (row: number) => (whole ? undefined : rows.scrollToIndex(row, { align: 'center' }));
  if (whole)
    return { drawn: Array.from({ length: count }, (_, row) => row), before: 0, after: 0, measure: undefined, scrollTo };
  const items = rows.getVirtualItems();
  return {
    drawn: items.map(({ index }) => index),
    before: items[0] ? items[0].start - scrollMargin : 0,
    after: rows.getTotalSize() - ((items.at(-1)?.end ?? scrollMargin) - scrollMargin),
    measure: rows.measureElement,
    scrollTo,
  };
}
