import { type KeyboardEvent, type RefObject, useEffect, useMemo, useRef, useState } from 'react';
import type { LookRow, LookSheetView } from '../../../shared/contract/boxes.ts';
import type { LookResult } from '../../../shared/model/look.ts';
import { useRowDrafts } from '../../client/row-drafts.ts';
import { useTodayChanges } from '../../client/today-changes.ts';
import { useLongRows } from '../../components/use-long-rows.ts';
import { useResultKeys } from '../../components/words.ts';
import { type Answers, answerTo } from './grid-keys.ts';
import {
  firstChangedRow,
  type GridAct,
  type GridState,
  gridAfter,
  marksQueen,
  numberAfter,
  resultOfKey,
  untouchedRows,
} from './look-grid-state.ts';
import { useLookTyping } from './look-typing.ts';
import { beginning, fieldId, sameText, savedFields, TYPED_FIELDS, typedField } from './typed-fields.ts';
import { useCodeTyping } from './use-code-typing.ts';

/** Height of a row of one line, until it is measured. */
const ROW_HEIGHT = 47;

/** What the grid shows and what its keys do: rows as typed, where the typing stands, and the saving behind it. */
export function useLookGrid(view: LookSheetView, askedAt: number, sheetDay: string) {
  const [rows, setRows] = useState(view.rows);
  const drafts = useRowDrafts(`box-look:${sheetDay}`, savedFields(view.rows), sameText);
  const [begin] = useState(() => beginning(view.rows, drafts.of));
  const { state, at, act } = useGridState(view.rows.length, begin.state);
  const [number, setNumber] = useState(begin.number ?? view.nextQueenNumber);
  const [finished, setFinished] = useState(false);
  const typing = useLookTyping(sheetDay, (saved) => {
    for (const field of TYPED_FIELDS) drafts.saved(fieldId(saved.id, field), typedField(saved, field));
    setRows((before) => before.map((row) => (row.id === saved.id ? saved : row)));
  });
  useFollowedView(view, askedAt, rows, (changed) => {
    setRows(view.rows);
    setNumber(view.nextQueenNumber);
    typing.forget();
    act({ kind: 'go', to: changed });
  });
  const changes = useTodayChanges();
  const grid = useRef<HTMLTableElement>(null);
  const long = useLongRows(rows.length, ROW_HEIGHT, grid);
  useFocusOnRow(grid, state, finished, long.scrollTo);
  const type = (result: LookResult, mark: boolean) => {
    const row = rows[at.current.current];
    if (!row) return;
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
    for (const row of untouchedRows(rows.map(typing.asTyped))) void typing.save(row, { result, queenNumber: null });
    act({ kind: 'last' });
  };
  const finish = () =>
    void typing.settled().then(() => {
      setFinished(true);
      void changes.compare();
    });
  const { code, onKeyDown } = useGridKeys(view, grid, { at, act, fill, finish, type });
  return { rows, state, number, drafts, finished, changes, typing, code, grid, long, act, giveNumber, onKeyDown };
}

/**
 * After an undo the sheet is asked for anew: the rows follow it, and the typing goes to the row that changed. The answer
 * can be the very one the typing began with, so the time of asking tells that it is new.
 */
function useFollowedView(
  view: LookSheetView,
  askedAt: number,
  rows: readonly LookRow[],
  follow: (changed: number) => void,
): void {
  const seen = useRef(askedAt);
  useEffect(() => {
    if (seen.current === askedAt) return;
    seen.current = askedAt;
    const changed = firstChangedRow(rows, view.rows);
    if (changed >= 0) follow(changed);
  });
}

/** Where the typing stands. The ref is there at once: two keys may come before the page is drawn again. */
function useGridState(rows: number, begin: GridState) {
  const [state, setState] = useState(begin);
  const at = useRef<GridState>(state);
  const act = (one: GridAct) => {
    at.current = gridAfter(at.current, one, rows);
    setState(at.current);
  };
  return { state, at, act };
}

type Acts = Pick<Answers, 'act' | 'fill' | 'finish' | 'type'> & { readonly at: RefObject<GridState> };

/** The keys of the grid: a field's own first, then a scanned code, then results and moves. */
function useGridKeys(view: LookSheetView, grid: RefObject<HTMLTableElement | null>, { at, ...acts }: Acts) {
  const keys = useResultKeys();
  const codes = useMemo(() => view.rows.map((row) => row.code), [view.rows]);
  const resultOf = (key: string) => resultOfKey(key, keys);
  const code = useCodeTyping({
    codes,
    isResult: (key) => resultOf(key) !== null,
    jump: (to) => acts.act({ kind: 'go', to }),
    giveBack: (held) => {
      for (const { key, shift } of held) {
        const result = resultOf(key);
        if (result) acts.type(result, marksQueen({ key, shiftKey: shift }));
      }
    },
  });
  const onKeyDown = (event: KeyboardEvent) => {
    const row = rowElement(grid.current, at.current.current);
    if (event.target instanceof HTMLInputElement) {
      if (leavesInput(event, row)) acts.act({ kind: 'down' });
      return;
    }
    if (!isPlain(event)) code.flush();
    if (event.key === 'F4') row?.querySelector<HTMLElement>('input[data-note]')?.focus();
    else if (
      !at.current.filling &&
      isPlain(event) &&
      code.take({ key: event.key, shift: event.shiftKey, at: event.timeStamp })
    ) {
      // The key was part of a code.
    } else if (!answerTo(event, { ...acts, filling: at.current.filling, resultOf })) return;
    event.preventDefault();
  };
  return { code, onKeyDown };
}

const isPlain = (event: KeyboardEvent): boolean => !event.ctrlKey && !event.metaKey && !event.altKey;

const rowElement = (grid: HTMLTableElement | null, index: number): HTMLElement | undefined =>
  grid?.querySelector<HTMLElement>(`tr[data-row="${index}"]`) ?? undefined;

/** In strength, food and note Enter saves and goes down, Escape goes back to the result; true when to go down. */
function leavesInput(event: KeyboardEvent, row: HTMLElement | undefined): boolean {
  if (!row || (event.key !== 'Enter' && event.key !== 'Escape') || event.ctrlKey) return false;
  event.preventDefault();
  row.querySelector<HTMLElement>('[data-now]')?.focus();
  return event.key === 'Enter';
}

/** The row that is typed has the focus. In a long sheet a row far off is scrolled to first, so that it is drawn at all. */
function useFocusOnRow(
  grid: RefObject<HTMLTableElement | null>,
  { current, numbering }: GridState,
  finished: boolean,
  scrollTo: (row: number) => void,
): void {
  const scroll = useRef(scrollTo);
  scroll.current = scrollTo;
  const begun = useRef(false);
  useEffect(() => {
    if (finished) return;
    const half = begun.current ? null : rowElement(grid.current, current)?.querySelector('input[data-half]');
    begun.current = true;
    const selector = numbering ? 'input[data-number]' : half ? 'input[data-half]' : '[data-now]';
    const take = () => rowElement(grid.current, current)?.querySelector<HTMLElement>(selector)?.focus();
    if (rowElement(grid.current, current)) {
      take();
      return;
    }
    scroll.current(current);
    const frame = requestAnimationFrame(() => requestAnimationFrame(take));
    return () => cancelAnimationFrame(frame);
  }, [grid, current, numbering, finished]);
}
