import { memo, type ReactNode, type Ref } from 'react';

export interface Column<Row> {
  readonly key: string;
  readonly title: ReactNode;
  readonly cell: (row: Row) => ReactNode;
  readonly numeric?: boolean;
  /** The column that names the row. */
  readonly head?: boolean;
}

export interface TableProps<Row> {
  readonly caption: string;
  readonly columns: readonly Column<Row>[];
  readonly rows: readonly Row[];
  readonly rowKey: (row: Row) => string;
  readonly quiet?: ((row: Row) => boolean) | undefined;
  /** Said where several rows can be chosen: whether this one is. */
  readonly chosen?: ((row: Row) => boolean) | undefined;
}

/** Which rows of a long list are drawn, and the room of the others. */
export interface DrawnRows {
  readonly drawn: readonly number[];
  /** Room in pixels for the rows left out before and after them. */
  readonly before: number;
  readonly after: number;
  /** Measures a drawn row, which carries `data-index`. */
  readonly measure: ((element: HTMLElement | null) => void) | undefined;
}

interface PartTableProps<Row> extends TableProps<Row> {
  /** Nothing said: every row is drawn. */
  readonly part?: DrawnRows;
  readonly widths?: readonly string[] | null;
  readonly head?: Ref<HTMLTableSectionElement>;
  readonly body?: Ref<HTMLTableSectionElement>;
}

/** A table whose rows can be chosen is a grid; else `aria-selected` would mean nothing. */
const GRID = { role: 'grid', 'aria-multiselectable': true } as const;

/** A plain table that scrolls sideways inside itself when it must. */
export function PlainTable<Row>({
  caption,
  columns,
  rows,
  rowKey,
  quiet,
  chosen,
  part,
  widths,
  head,
  body,
}: PartTableProps<Row>) {
  const drawn = part ?? { drawn: rows.map((_, index) => index), before: 0, after: 0, measure: undefined };
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that may scroll must be reachable by keyboard (WCAG 2.1.1)
    <div role="group" className="table-scroll" tabIndex={0} aria-label={caption}>
      <table
        className="plain"
        {...(chosen ? GRID : {})}
        aria-rowcount={drawn.drawn.length < rows.length ? rows.length + 1 : undefined}
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
          <Rows part={drawn} columns={columns} rows={rows} rowKey={rowKey} quiet={quiet} chosen={chosen} />
        </tbody>
      </table>
    </div>
  );
}

interface RowsProps<Row> extends Omit<TableProps<Row>, 'caption'> {
  readonly part: DrawnRows;
}

function Rows<Row>({ part, columns, rows, rowKey, quiet, chosen }: RowsProps<Row>) {
  return (
    <>
      <Room height={part.before} />
      {part.drawn.map((index) => {
        const row = rows[index];
        if (row === undefined) return null;
        return (
          <tr
            key={rowKey(row)}
            className={quiet?.(row) ? 'quiet' : undefined}
            ref={part.measure}
            data-index={part.measure ? index : undefined}
            aria-rowindex={part.measure ? index + 2 : undefined}
            aria-selected={chosen?.(row)}
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
      <Room height={part.after} />
    </>
  );
}

/** Keeps the room of the rows that are not drawn. */
const Room = memo(function Room({ height }: { height: number }) {
  // biome-ignore lint/a11y/noAriaHiddenOnFocusable: an empty row cannot have the focus
  return height > 0 ? <tr aria-hidden="true" style={{ height }} /> : null;
});
