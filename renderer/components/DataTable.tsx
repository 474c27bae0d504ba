import { useLayoutEffect, useRef, useState } from 'react';
import { PlainTable, type TableProps } from './PlainTable.tsx';
import { useLongRows, WHOLE_LIST_ROWS } from './use-long-rows.ts';

/** Height of a row of one line in the roomier density, until it is measured. */
const ROW_HEIGHT = 41;

/** A plain table of which, where it is long, only what is in the window is drawn. */
export function DataTable<Row>({ caption, columns, rows, rowKey, quiet, chosen }: TableProps<Row>) {
  const head = useRef<HTMLTableSectionElement>(null);
  const body = useRef<HTMLTableSectionElement>(null);
  const long = useLongRows(rows.length, ROW_HEIGHT, body);
  const widths = useSteadyWidths(rows.length > WHOLE_LIST_ROWS, head);
  return (
    <PlainTable
      caption={caption}
      columns={columns}
      rows={rows}
      rowKey={rowKey}
      quiet={quiet}
      chosen={chosen}
      part={long}
      widths={widths}
      head={head}
      body={body}
    />
  );
}

/** Columns keep the widths of the first rows, so that a long list does not shift sideways while it is scrolled. */
function useSteadyWidths(wanted: boolean, head: React.RefObject<HTMLTableSectionElement | null>) {
  const [widths, setWidths] = useState<readonly string[] | null>(null);
  useLayoutEffect(() => {
    const cells = [...(head.current?.querySelectorAll<HTMLElement>('th, td') ?? [])].map((cell) => cell.offsetWidth);
    const all = cells.reduce((sum, width) => sum + width, 0);
    setWidths(wanted && all > 0 ? cells.map((width) => `${(100 * width) / all}%`) : null);
  }, [wanted, head]);
  return wanted ? widths : null;
}
