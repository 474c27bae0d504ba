import { memo, type ReactNode, useLayoutEffect, useRef, useState } from 'react';
import { type LongRows, useLongRows, WHOLE_LIST_ROWS } from './use-long-rows.ts';

export interface Column<Row> {
  readonly key: string;
  readonly title: ReactNode;
  readonly cell: (row: Row) => ReactNode;
  readonly numeric?: boolean;
  /** The column that names the row. */
  readonly head?: boolean;
}

interface DataTableProps<Row> {
  readonly caption: string;
  readonly columns: readonly Column<Row>[];
  readonly rows: readonly Row[];
  readonly rowKey: (row: Row) => string;
  readonly quiet?: (row: Row) => boolean;
}

/** Height of a row of one line in the roomier density, until it is measured. */
const ROW_HEIGHT = 41;

/** A plain table that scrolls sideways inside itself when it must; of a long one only what is in the window is drawn. */
export function DataTable<Row>({ caption, columns, rows, rowKey, quiet }: DataTableProps<Row>) {
  const head = useRef<HTMLTableSectionElement>(null);
  const body = useRef<HTMLTableSectionElement>(null);
  const long = useLongRows(rows.length, ROW_HEIGHT, body);
  const widths = useSteadyWidths(rows.length > WHOLE_LIST_ROWS, head);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that may scroll must be reachable by keyboard (WCAG 2.1.1)
    <div role="group" className="table-scroll" tabIndex={0} aria-label={caption}>
      <table
        className="plain"
        aria-rowcount={long.drawn.length < rows.length ? rows.length + 1 : undefined}
        style={widths ? { tableLayout: 'fixed' } : undefined}
      >
        <caption className="visually-hidden">{caption}</caption>
        <thead ref={head}>
          <tr>
            {columns.map((column, index) =>
              column.title === '' ? (
                <td key={column.key} style={{ width: widths?.[index] }} />
              ) : (
                <th
                  key={column.key}
                  scope="col"
                  className={column.numeric ? 'number' : undefined}
                  style={{ width: widths?.[index] }}
                >
                  {column.title}
                </th>
              ),
            )}
          </tr>
        </thead>
        <tbody ref={body}>
          <Rows long={long} columns={columns} rows={rows} rowKey={rowKey} quiet={quiet} />
        </tbody>
      </table>
    </div>
  );
}

interface RowsProps<Row> extends Omit<DataTableProps<Row>, 'caption' | 'quiet'> {
  readonly long: LongRows;
  readonly quiet: ((row: Row) => boolean) | undefined;
}

function Rows<Row>({ long, columns, rows, rowKey, quiet }: RowsProps<Row>) {
  return (
    <>
      <Room height={long.before} />
      {long.drawn.map((index) => {
        const row = rows[index];
        if (row === undefined) return null;
        return (
          <tr
            key={rowKey(row)}
            className={quiet?.(row) ? 'quiet' : undefined}
            ref={long.measure}
            data-index={long.measure ? index : undefined}
            aria-rowindex={long.measure ? index + 2 : undefined}
          >
            {columns.map((column) =>
              column.head ? (
                <th key={column.key} scope="row">
                  {column.cell(row)}
                </th>
              ) : (
                <td key={column.key} className={column.numeric ? 'number' : undefined}>
                  {column.cell(row)}
                </td>
              ),
            )}
          </tr>
        );
      })}
      <Room height={long.after} />
    </>
  );
}

/** Keeps the room of the rows that are not drawn. */
const Room = memo(function Room({ height }: { height: number }) {
  // biome-ignore lint/a11y/noAriaHiddenOnFocusable: an empty row cannot have the focus
  return height > 0 ? <tr aria-hidden="true" style={{ height }} /> : null;
});

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
