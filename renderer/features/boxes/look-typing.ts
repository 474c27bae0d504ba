import { useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import type { LookRow } from '../../../shared/contract/boxes.ts';
import type { Notice, Refusal } from '../../../shared/contract/refusal.ts';
import type { LookResult } from '../../../shared/model/look.ts';
import { ask } from '../../client/client.ts';
import { newId } from '../../client/hooks.ts';
import { createSaveLine } from '../../client/save-line.ts';
import type { RowState } from '../../components/SavedSign.tsx';

/** What a row changes; what it does not name stays as it was typed. */
export interface LookChange {
  readonly result?: LookResult;
  readonly queenNumber?: string | null;
  readonly strength?: number | null;
  readonly food?: number | null;
  readonly note?: string | null;
}

export interface Said {
  readonly refusal: Refusal | null;
  readonly notices: readonly Notice[];
  readonly notReached: boolean;
}

interface Typed {
  readonly id: string;
  readonly result: LookResult;
  readonly strength: number | null;
  readonly food: number | null;
  readonly note: string | null;
}

/**
 * Saves looks in the order they were typed, one after the other, and keeps what was said about each row; `settled` when
 * all typed so far are saved or refused. The typed state is kept here as well, so that a second key on a row builds on
 * the first although it is still being saved.
 */
export function useLookTyping(sheetDay: string, onSaved: (row: LookRow) => void) {
  const queries = useQueryClient();
  const typedByRow = useRef(new Map<string, Typed>());
  const [line] = useState(() => createSaveLine(() => queries.invalidateQueries({ predicate: isNoSheet })));
  const { said, states, say, begin, forgetSaid } = useSaid();
  const [lastSaved, setLastSaved] = useState<{ readonly box: string; readonly result: LookResult } | null>(null);

  /** A refused change is taken back here too, so that the row's next key does not carry it along. */
  const send = async (row: LookRow, before: Typed, typed: Typed, queenNumber: string | null): Promise<boolean> => {
    try {
      const queen = queenNumber === null ? null : { id: newId(), number: queenNumber };
      const result = await ask.boxes.recordLook.mutate({ ...typed, boxId: row.id, lookedOn: sheetDay, queen });
      if (!result.ok) {
        typedByRow.current.set(row.id, before);
        say(row.id, { refusal: result.refusal, notices: [], notReached: false });
        return false;
      }
      say(row.id, { refusal: null, notices: result.value.notices, notReached: false });
      setLastSaved({ box: row.code, result: typed.result });
      onSaved(result.value.row);
      return true;
    } catch {
      say(row.id, { refusal: null, notices: [], notReached: true });
      return false;
    }
  };

  const save = (row: LookRow, { queenNumber = null, ...change }: LookChange): Promise<void> => {
    const before = typedByRow.current.get(row.id) ?? row.typed ?? EMPTY;
    const typed = { ...before, ...change, id: before.id === '' ? newId() : before.id };
    typedByRow.current.set(row.id, typed);
    begin(row.id);
    return line.add(() => send(row, before, typed, queenNumber));
  };

  const stateOf = (row: LookRow): RowState | null => states.get(row.id) ?? (row.typed ? 'saved' : null);
  /** With what was typed and is not in the workbook yet, so that a slow or a failing drive hides nothing typed. */
  const asTyped = (row: LookRow): LookRow => {
    const typed = typedByRow.current.get(row.id);
    return typed && typed.id !== '' ? { ...row, typed } : row;
  };
  // The rows are shown anew from the workbook, as after an undo: what was typed before no longer counts.
  const forget = () => {
    typedByRow.current.clear();
    forgetSaid();
    setLastSaved(null);
  };
  return { save, settled: line.settled, forget, stateOf, asTyped, said, lastSaved, toCheck: toCheckIn(said) };
}

/** What was said about each row's last save, and how far it is. */
function useSaid() {
  const [said, setSaid] = useState<ReadonlyMap<string, Said>>(new Map());
  const [states, setStates] = useState<ReadonlyMap<string, RowState>>(new Map());
  const put = (row: string, state: RowState) => setStates((before) => new Map(before).set(row, state));
  const say = (row: string, what: Said) => {
    setSaid((before) => new Map(before).set(row, what));
    put(row, what.refusal || what.notReached ? 'not-saved' : 'saved');
  };
  const forgetSaid = () => {
    setSaid(new Map());
    setStates(new Map());
  };
  return { said, states, say, begin: (row: string) => put(row, 'saving'), forgetSaid };
}

/** The sheet itself is typed further: its rows come with the answers to their own saves. */
const isNoSheet = ({ queryKey }: { readonly queryKey: readonly unknown[] }): boolean => queryKey[0] !== 'looks';

const toCheckIn = (said: ReadonlyMap<string, Said>): number =>
  [...said.values()].filter((one) => one.refusal || one.notReached || one.notices.length > 0).length;

const EMPTY: Typed = { id: '', result: 'not-looked', strength: null, food: null, note: null };
