import { useRef, useState } from 'react';
import type { FeedingRow, FeedingSheetView } from '../../../shared/contract/feeding.ts';
import { ok } from '../../../shared/kernel/result.ts';
import { ask } from '../../client/client.ts';
import { newId } from '../../client/hooks.ts';
import { type RowDrafts, useRowDrafts } from '../../client/row-drafts.ts';
import { useTodayChanges } from '../../client/today-changes.ts';
import { useRowSaving } from '../../client/use-row-saving.ts';
import { firstToType, useRowGrid } from '../../components/use-row-grid.ts';
import { isNoteHalfTyped, useTypedRows } from '../../components/use-typed-rows.ts';
import { useFeedAmounts } from '../../components/words.ts';
import {
  EMPTY_FEEDING,
  feedingSheet,
  isNoFeeding,
  type SheetFeed,
  sameFeeding,
  type TypedFeeding,
  typedFeeding,
} from './typed-feeding.ts';

/** What is typed, what is saved of it, and the keys. A row that is emptied is no feeding any more. */
export function useFeedingGrid(view: FeedingSheetView, sheet: SheetFeed) {
  const { text } = useFeedAmounts();
  const { rows } = view;
  const read = (row: FeedingRow) => typedFeeding(row.typed, text);
  const drafts = useRowDrafts(
    feedingSheet({ ...sheet, day: view.sheetDay }),
    rows.map((row) => ({ id: row.id, now: read(row) })),
    sameFeeding,
  );
  const [finished, setFinished] = useState(false);
  const { said, settled, save, follow } = useFeedingSaving(view, sheet, drafts);
  const { of, savedOf, type, ...typed } = useTypedRows({
    rows,
    read,
    empty: EMPTY_FEEDING,
    same: sameFeeding,
    drafts,
    said,
    onFollow: follow,
  });
  const changes = useTodayChanges();
  const [start] = useState(() => firstToType(rows, drafts.found));
  const grid = useRowGrid({
    rows: rows.length,
    start,
    startInNote: isNoteHalfTyped(rows[start], read, drafts),
    onKey: () => false,
    onFinish: () =>
      void settled().then(() => {
        setFinished(true);
        void changes.compare();
      }),
  });
  const leave = (row: FeedingRow) => {
    const now = typed.leave(row);
    if (now) save(row, now);
  };
  const done = rows.filter((row) => !isNoFeeding(savedOf(row))).length;
  return { of, type, leave, done, finished, said, found: drafts.found, changes, grid };
}

/** Saves rows in the order they were typed; which rows the workbook holds is known when their turn comes. */
function useFeedingSaving(
  { rows, sheetDay }: FeedingSheetView,
  { places, feed, ownFeed }: SheetFeed,
  drafts: RowDrafts<TypedFeeding>,
) {
  const [ids] = useState(() => new Map(rows.map((row) => [row.id, row.typed?.id ?? newId()])));
  const held = useRef(new Set(rows.filter((row) => row.typed !== null).map((row) => row.id)));
  const saving = useRowSaving();
  const follow = (quiet: readonly FeedingRow[]) => {
    for (const row of quiet) held.current[row.typed === null ? 'delete' : 'add'](row.id);
  };
  const send = async (row: FeedingRow, { amount, note }: TypedFeeding) => {
    const id = ids.get(row.id) ?? newId();
    if (isNoFeeding({ amount, note }))
      return held.current.delete(row.id) ? ask.feeding.removeFeeding.mutate({ feedingId: id }) : ok(null);
    const place = { place: places === 'hives' ? 'hive' : 'box', placeId: row.id } as const;
    const given = { fedOn: sheetDay, feed, ownFeed, amount, note: note.trim() || null };
    const result = await ask.feeding.recordFeeding.mutate({ id, ...place, ...given });
    if (result.ok) held.current.add(row.id);
    return result;
  };
  const save = (row: FeedingRow, typed: TypedFeeding) =>
    saving.save(row.id, async () => {
      const result = await send(row, typed);
      if (result.ok) drafts.saved(row.id, typed);
      return result;
    });
  return { said: saving.said, settled: saving.settled, save, follow };
}
