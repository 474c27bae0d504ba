import { type ReactNode, useEffect, useLayoutEffect, useRef } from 'react';
import { ChangeLines, type ChangeLinesProps } from './ChangeLines.tsx';
import type { useRowGrid } from './use-row-grid.ts';
import { useFirstWords } from './words.ts';

interface RowSheetProps<Row> {
  readonly title: string;
  readonly columns: Readonly<Record<string, string>>;
  readonly rows: readonly Row[];
  readonly idOf: (row: Row) => string;
  readonly said: ReadonlyMap<string, Required<Pick<ChangeLinesProps, 'refusal' | 'notices' | 'notReached'>>>;
  readonly grid: ReturnType<typeof useRowGrid>;
  /** The cells of one row, without the row itself. */
  readonly cells: (row: Row, current: boolean) => ReactNode;
  /** What must be known before the lid is lifted, a line each. */
  readonly warnings?: (row: Row) => readonly ReactNode[];
  /** The row waits with what was typed before the sheet was opened. */
  readonly found: (row: Row) => boolean;
  /** The row that had the focus is drawn no longer, as when it was scrolled away. */
  readonly onGone?: (row: Row) => void;
}

/** The table of an evening's typing, row by row; of a long one only what is in the window is drawn. */
export function RowSheet<Row>({ title, columns, rows, grid, ...each }: RowSheetProps<Row>) {
  const { long } = grid;
  return (
    <div className="table-scroll">
      <table
        className="look-grid"
        ref={grid.table}
        onKeyDown={grid.onKeyDown}
        aria-label={title}
        aria-rowcount={long.drawn.length < rows.length ? rows.length + 1 : undefined}
      >
        <thead>
          <tr>
            {Object.entries(columns).map(([key, name]) => (
              <th key={key} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <Room height={long.before} />
        {long.drawn.map((index) => {
          const row = rows[index];
          return row === undefined ? null : (
            <SheetRow key={each.idOf(row)} row={row} index={index} grid={grid} across={columns} {...each} />
          );
        })}
        <Room height={long.after} />
      </table>
    </div>
  );
}

type SheetRowProps<Row> = Omit<RowSheetProps<Row>, 'title' | 'columns' | 'rows'> & {
  readonly row: Row;
  readonly index: number;
  readonly across: Readonly<Record<string, string>>;
};

/** One row with what is said about it, in a body of its own so that both are measured together. */
function SheetRow<Row>({ row, index, across, idOf, said, found, grid, cells, warnings, onGone }: SheetRowProps<Row>) {
  const { frame } = useFirstWords();
  const line = useRef<HTMLTableRowElement>(null);
  const gone = useRef(() => {});
  useEffect(() => {
    gone.current = () => onGone?.(row);
  });
  // Before the row is taken out of the page: after that nothing in it has the focus.
  useLayoutEffect(() => {
    const drawn = line.current;
    return () => {
      if (drawn?.contains(document.activeElement)) gone.current();
    };
  }, []);
  const current = index === grid.current;
  const about = said.get(idOf(row));
  const told = about && (about.refusal || about.notReached || about.notices.length > 0) ? about : null;
  const warned = warnings?.(row) ?? [];
  const isFound = found(row);
  return (
    <tbody ref={grid.long.measure} data-index={index}>
      <tr
        ref={line}
        data-row={index}
        aria-rowindex={grid.long.measure ? index + 2 : undefined}
        className={current ? 'current' : undefined}
        onFocus={() => grid.setCurrent(index)}
      >
        {cells(row, current)}
      </tr>
      {told || isFound || warned.length > 0 ? (
        <tr>
          <td colSpan={Object.keys(across).length}>
            {warned}
            {isFound ? <p className="line-notice">{frame.rowDraft}</p> : null}
            {told ? <ChangeLines {...told} /> : null}
          </td>
        </tr>
      ) : null}
    </tbody>
  );
}

/** Keeps the room of the rows that are not drawn. */
export function Room({ height }: { height: number }) {
  if (height <= 0) return null;
  return (
    <tbody>
      {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: an empty row cannot have the focus */}
      <tr aria-hidden="true" style={{ height }} />
    </tbody>
  );
}
