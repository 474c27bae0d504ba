import { useState } from 'react';
import type { HiveLookRow, HiveLookSheetView } from '../../../shared/contract/hives.ts';
import { ask } from '../../client/client.ts';
import { newId } from '../../client/hooks.ts';
import { useRowDrafts } from '../../client/row-drafts.ts';
import { useTodayChanges } from '../../client/today-changes.ts';
import { type RowSaid, useRowSaving } from '../../client/use-row-saving.ts';
import { EveningEnd } from '../../components/EveningEnd.tsx';
import { HandsOffSign } from '../../components/HandsOffSign.tsx';
import { RowSheet } from '../../components/RowSheet.tsx';
import { SavedSign } from '../../components/SavedSign.tsx';
import { firstToType, useRowGrid } from '../../components/use-row-grid.ts';
import { isNoteHalfTyped, useTypedRows } from '../../components/use-typed-rows.ts';
import { useDays, useWords } from '../../components/words.ts';
import { leaveAloneTexts } from './leave-alone-texts.ts';
import { EMPTY_LOOK, isEmptyLook, lookOf, sameLook, type TypedHiveLook, typedLook } from './typed-hive-look.ts';

/** What is typed, what is saved of it, and the keys. */
function useHiveLookGrid(view: HiveLookSheetView) {
  const { rows } = view;
  const read = (row: HiveLookRow) => typedLook(row.typed);
  const drafts = useRowDrafts(
    `hive-look:${view.sheetDay}`,
    rows.map((row) => ({ id: row.id, now: read(row) })),
    sameLook,
  );
  const [ids] = useState(() => new Map(rows.map((row) => [row.id, row.typed?.id ?? newId()])));
  const [finished, setFinished] = useState(false);
  const { said, save, settled } = useRowSaving();
  const { of, savedOf, type, ...typed } = useTypedRows({ rows, read, empty: EMPTY_LOOK, same: sameLook, drafts, said });
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
  const leave = (row: HiveLookRow) => {
    const look = typed.leave(row);
    if (!look) return;
    const record = { ...lookOf(look), id: ids.get(row.id) ?? newId(), colonyId: row.id, lookedOn: view.sheetDay };
    save(row.id, async () => {
      const result = await ask.hives.recordHiveLook.mutate(record);
      if (result.ok) drafts.saved(row.id, look);
      return result;
    });
  };
  const done = rows.filter((row) => !isEmptyLook(savedOf(row))).length;
  return { of, type, leave, done, finished, said, found: drafts.found, changes, grid };
}

/** Enter goes down a hive, Tab goes across; a row is saved when a field of it is left. */
export function HiveLookGrid({ view }: { view: HiveLookSheetView }) {
  const { hives: words } = useWords();
  const { sheet } = words;
  const days = useDays();
  const { of, type, leave, done, finished, said, found, changes, grid } = useHiveLookGrid(view);
  return (
    <>
      <p className="soft" aria-live="polite">
        {sheet.progress(done, view.rows.length)}
      </p>
      <RowSheet
        title={sheet.title}
        columns={sheet.columns}
        rows={view.rows}
        idOf={(row) => row.id}
        said={said}
        found={(row) => found(row.id)}
        grid={grid}
        cells={(row) => (
          <Cells
            row={row}
            look={of(row)}
            said={said.get(row.id)}
            onType={(change) => type(row, change)}
            onLeave={() => leave(row)}
          />
        )}
        warnings={(row) =>
          leaveAloneTexts(row, words, days.short).map((reason) => (
            <p key={reason} className="hands-off">
              <HandsOffSign /> {row.code}: {reason}
            </p>
          ))
        }
        onGone={leave}
      />
      {finished ? <EveningEnd summary={sheet.summary(done)} changes={changes} /> : null}
      <p className="legend soft">{sheet.keys}</p>
    </>
  );
}

interface CellsProps {
  readonly row: HiveLookRow;
  readonly look: TypedHiveLook;
  readonly said: RowSaid | undefined;
  readonly onType: (change: Partial<TypedHiveLook>) => void;
  readonly onLeave: () => void;
}

function Cells({ row, look, said, onType, onLeave }: CellsProps) {
  const { hives: words } = useWords();
  const days = useDays();
  const field = (key: keyof TypedHiveLook, width: string) => (
    <td>
      <input
        className="control"
        style={{ width, minHeight: 34 }}
        aria-label={`${row.code}, ${words.sheet.columns[key]}`}
        data-now={key === 'strength' ? '' : undefined}
        data-note={key === 'note' ? '' : undefined}
        inputMode={key === 'note' ? undefined : 'numeric'}
        autoComplete="off"
        value={look[key]}
        onChange={(event) => onType({ [key]: event.target.value })}
        onBlur={onLeave}
      />
    </td>
  );
  return (
    <>
      <th scope="row">{[row.code, row.name].filter(Boolean).join(' ')}</th>
      <td>{[row.yard, row.place].filter(Boolean).join(', ')}</td>
      <td>{row.last ? `${days.short(row.last.lookedOn)} ${row.last.note}` : words.one.noLooks}</td>
      {field('strength', '3.4rem')}
      {field('food', '3.4rem')}
      {field('note', '16rem')}
      <td>
        <SavedSign state={said?.state ?? (row.typed ? 'saved' : null)} />
      </td>
    </>
  );
}
