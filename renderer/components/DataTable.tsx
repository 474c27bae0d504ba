import type { ReactNode } from 'react';

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

/** A plain table that scrolls sideways inside itself when it must. */
export function DataTable<Row>({ caption, columns, rows, rowKey, quiet }: DataTableProps<Row>) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that may scroll must be reachable by keyboard (WCAG 2.1.1)
    <div role="group" className="table-scroll" tabIndex={0} aria-label={caption}>
      <table className="plain">
        <caption className="visually-hidden">{caption}</caption>
        <thead>
          <tr>
            {columns.map((column) =>
              column.title === '' ? (
                <td key={column.key} />
              ) : (
                <th key={column.key} scope="col" className={column.numeric ? 'number' : undefined}>
                  {column.title}
                </th>
              ),
            )}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={rowKey(row)} className={quiet?.(row) ? 'quiet' : undefined}>
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
          ))}
        </tbody>
      </table>
    </div>
  );
}
