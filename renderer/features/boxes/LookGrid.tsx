import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import type { LookRow, LookSheetView } from '../../../shared/contract/boxes.ts';
import type { LookResult } from '../../../shared/model/look.ts';
import { useWords } from '../../components/words.ts';
import { GridRow } from './GridRow.tsx';
import { Legend } from './Legend.tsx';
import {
  firstOpenRow,
  type GridAct,
  gridAfter,
  marksQueen,
  numberAfter,
  resultOfKey,
  START,
  untouchedRows,
} from './look-grid-state.ts';
import { useLookTyping } from './look-typing.ts';

/** The grid itself. Keys act only while it has the focus; each look is saved as it is typed. */
export function LookGrid({ view, sheetDay }: { view: LookSheetView; sheetDay: string }) {
  const { boxes, looks } = useWords();
  const { sheet } = boxes;
  const [rows, setRows] = useState(view.rows);
  const [state, setState] = useState({ ...START, current: firstOpenRow(view.rows) });
  const [number, setNumber] = useState(view.nextQueenNumber);
  const [finished, setFinished] = useState(false);
  const typing = useLookTyping(sheetDay, (saved) =>
    setRows((before) => before.map((row) => (row.id === saved.id ? saved : row))),
  );
  const grid = useRef<HTMLTableElement>(null);
  const act = (one: GridAct) => setState((before) => gridAfter(before, one, rows.length));
  const done = rows.filter((row) => row.typed).length;
  useFocusOnRow(grid, state.current, state.numbering, finished);

  const typeResult = (row: LookRow, result: LookResult, mark: boolean) => {
    setFinished(false);
    void typing.save(row, { result, queenNumber: null });
    act({ kind: 'typed', mark });
  };
  const giveNumber = (row: LookRow, typedNumber: string) => {
    void typing.save(row, { queenNumber: typedNumber });
    setNumber(numberAfter(typedNumber));
    act({ kind: 'numbered' });
  };
  const fill = (result: LookResult) => {
    for (const row of untouchedRows(rows)) void typing.save(row, { result, queenNumber: null });
    act({ kind: 'last' });
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const row = rows[state.current];
    if (event.target instanceof HTMLInputElement) {
      if (leavesInput(event, row, grid.current, state.current)) act({ kind: 'down' });
      return;
    }
    if (event.key === 'F4') {
      event.preventDefault();
      rowElement(grid.current, state.current)?.querySelector<HTMLElement>('input[data-note]')?.focus();
      return;
    }
    const answer =
      row &&
      answerTo(event, {
        filling: state.filling,
        act,
        fill,
        finish: () => setFinished(true),
        type: (result, mark) => typeResult(row, result, mark),
      });
    if (answer) event.preventDefault();
  };
  return (
    <>
      <Progress typing={typing} done={done} all={rows.length} />
      {state.filling ? (
        <p className="line-notice" role="alert">
          {sheet.fillAsk(untouchedRows(rows).length, looks[state.filling].name)}
        </p>
      ) : null}
      <div className="table-scroll">
        {/* biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: one key a cell is a grid by the ARIA authoring practices */}
        <table className="look-grid" role="grid" aria-label={sheet.grid} ref={grid} onKeyDown={onKeyDown}>
          <Head />
          <tbody>
            {rows.map((row, index) => (
              <GridRow
                key={row.id}
                row={row}
                current={index === state.current}
                numbering={index === state.current && state.numbering ? number : null}
                said={typing.said.get(row.id)}
                onPick={() => act({ kind: 'go', to: index })}
                onNumber={(typedNumber) => giveNumber(row, typedNumber)}
                onLeave={() => act({ kind: 'leave' })}
                onMore={(more) => void typing.save(row, more)}
              />
            ))}
          </tbody>
        </table>
      </div>
      <Legend />
      {finished ? <Summary rows={rows} /> : null}
    </>
  );
}

const rowElement = (grid: HTMLTableElement | null, index: number): HTMLElement | undefined =>
  grid?.querySelectorAll<HTMLElement>('tr[data-row]')[index];

/** In strength, food and note Enter saves and goes down, Escape goes back to the result; true when to go down. */
function leavesInput(
  event: KeyboardEvent,
  row: LookRow | undefined,
  grid: HTMLTableElement | null,
  current: number,
): boolean {
  if (!row || (event.key !== 'Enter' && event.key !== 'Escape') || event.ctrlKey) return false;
  event.preventDefault();
  rowElement(grid, current)?.querySelector<HTMLElement>('[data-now]')?.focus();
  return event.key === 'Enter';
}

function Progress({ typing, done, all }: { typing: ReturnType<typeof useLookTyping>; done: number; all: number }) {
  const { boxes, looks } = useWords();
  const { sheet } = boxes;
  const { lastSaved, toCheck } = typing;
  return (
    <p className="soft" aria-live="polite">
      {lastSaved ? sheet.saved(lastSaved.box, looks[lastSaved.result].name, done, all) : sheet.progress(done, all)}
      {toCheck > 0 ? `, ${sheet.toCheck(toCheck)}` : ''}
    </p>
  );
}

interface Answers {
  readonly filling: LookResult | null;
  readonly act: (act: GridAct) => void;
  readonly fill: (result: LookResult) => void;
  readonly finish: () => void;
  readonly type: (result: LookResult, mark: boolean) => void;
}

const MOVES: Readonly<Record<string, GridAct>> = {
  ArrowUp: { kind: 'up' },
  ArrowDown: { kind: 'down' },
  Enter: { kind: 'down' },
  Home: { kind: 'first' },
  End: { kind: 'last' },
  Escape: { kind: 'leave' },
};

/** True when the key meant something to the grid. */
function answerTo(event: KeyboardEvent, { filling, act, fill, finish, type }: Answers): boolean {
  const ctrl = event.ctrlKey || event.metaKey;
  if (ctrl && event.key === 'Enter') finish();
  else if (ctrl && event.key.toLowerCase() === 'd') act({ kind: 'ask-fill' });
  else if (ctrl || event.altKey) return false;
  else if (filling && event.key === 'Enter') fill(filling);
  else if (MOVES[event.key]) act(MOVES[event.key] as GridAct);
  else {
    const result = resultOfKey(event.key);
    if (!result) return false;
    if (filling) act({ kind: 'fill-with', result });
    else type(result, marksQueen(event));
  }
  return true;
}

function useFocusOnRow(
  grid: React.RefObject<HTMLTableElement | null>,
  current: number,
  numbering: boolean,
  finished: boolean,
): void {
  useEffect(() => {
    if (finished) return;
    const selector = numbering ? 'input[data-number]' : '[data-now]';
    rowElement(grid.current, current)?.querySelector<HTMLElement>(selector)?.focus();
  }, [grid, current, numbering, finished]);
}

function Head() {
  const { columns } = useWords().boxes.sheet;
  return (
    <thead>
      <tr>
        {Object.entries(columns).map(([key, title]) => (
          <th key={key} scope="col">
            {title}
          </th>
        ))}
      </tr>
    </thead>
  );
}

function Summary({ rows }: { rows: readonly LookRow[] }) {
  const { boxes, looks } = useWords();
  const typed = rows.flatMap((row) => row.typed ?? []);
  const counts = [...Map.groupBy(typed, (look) => look.result)].map(
    ([result, of]) => `${of.length} ${looks[result].name}`,
  );
  return (
    <p className="line-good" role="status">
      {boxes.sheet.summary(typed.length, counts.join(', '))} <a href="#/today">{boxes.sheet.backToToday}</a>
    </p>
  );
}
