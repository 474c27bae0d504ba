import { useEffect, useRef, useState } from 'react';
import type { HiveLookRow, HiveLookSheetView } from '../../../shared/contract/hives.ts';
import { ask } from '../../client/client.ts';
import { newId } from '../../client/hooks.ts';
import { useRowDrafts } from '../../client/row-drafts.ts';
import { useTodayChanges } from '../../client/today-changes.ts';
import { type RowSaid, useRowSaving } from '../../client/use-row-saving.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { EveningEnd } from '../../components/EveningEnd.tsx';
import { HandsOffSign } from '../../components/HandsOffSign.tsx';
import { SavedSign } from '../../components/SavedSign.tsx';
import { firstToType, useRowGrid } from '../../components/use-row-grid.ts';
import { useDays, useWords } from '../../components/words.ts';
import { leaveAloneTexts } from './leave-alone-texts.ts';
import {
  EMPTY_LOOK,
  followedLooks,
  isEmptyLook,
  lookOf,
  sameLook,
  type TypedHiveLook,
  typedLook,
} from './typed-hive-look.ts';

/** What is typed, what is saved of it, and the keys. */
function useHiveLookGrid(view: HiveLookSheetView) {
  const [saved, setSaved] = useState(() => new Map(view.rows.map((row) => [row.id, typedLook(row.typed)])));
  const drafts = useRowDrafts(
    `hive-look:${view.sheetDay}`,
    view.rows.map((row) => ({ id: row.id, now: typedLook(row.typed) })),
    sameLook,
  );
  const [typed, setTyped] = useState(
    () => new Map([...saved].map(([id, look]): [string, TypedHiveLook] => [id, drafts.of(id) ?? look])),
  );
  const [ids] = useState(() => new Map(view.rows.map((row) => [row.id, row.typed?.id ?? newId()])));
  const [finished, setFinished] = useState(false);
  const saving = useRowSaving();
  const seen = useRef(view);
  useEffect(() => {
    if (seen.current === view) return;
    seen.current = view;
    const isBusy = (id: string) => !['saved', undefined].includes(saving.said.get(id)?.state);
    const followed = followedLooks(view.rows, { typed, saved }, isBusy);
    setTyped(new Map(followed.typed));
    setSaved(new Map(followed.saved));
  });
  const changes = useTodayChanges();
  const [start] = useState(() => firstToType(view.rows, drafts.found));
  const grid = useRowGrid({
    rows: view.rows.length,
    start,
    startInNote: isNoteHalfTyped(view.rows[start], drafts.of),
    onKey: () => false,
    onFinish: () =>
      void saving.settled().then(() => {
        setFinished(true);
        void changes.compare();
      }),
  });
  const of = (row: HiveLookRow) => typed.get(row.id) ?? EMPTY_LOOK;
  const type = (row: HiveLookRow, change: Partial<TypedHiveLook>) => {
    const look = { ...of(row), ...change };
    setTyped((before) => new Map(before).set(row.id, look));
    drafts.keep(row.id, sameLook(look, typedLook(row.typed)) ? null : look);
  };
  const leave = (row: HiveLookRow) => {
    const look = of(row);
    if (sameLook(look, saved.get(row.id) ?? EMPTY_LOOK)) return;
    setSaved((before) => new Map(before).set(row.id, look));
    const record = { ...lookOf(look), id: ids.get(row.id) ?? newId(), colonyId: row.id, lookedOn: view.sheetDay };
    saving.save(row.id, async () => {
      const result = await ask.hives.recordHiveLook.mutate(record);
      if (result.ok) drafts.saved(row.id, look);
      return result;
    });
  };
  const done = view.rows.filter((row) => !isEmptyLook(saved.get(row.id) ?? EMPTY_LOOK)).length;
  return { of, type, leave, done, finished, said: saving.said, found: drafts.found, changes, grid };
}

const isNoteHalfTyped = (row: HiveLookRow | undefined, half: (id: string) => TypedHiveLook | null): boolean => {
  const note = row && half(row.id)?.note;
  return note !== undefined && note !== typedLook(row?.typed ?? null).note;
};

/** Enter goes down a hive, Tab goes across; a row is saved when a field of it is left. */
export function HiveLookGrid({ view }: { view: HiveLookSheetView }) {
  const { sheet } = useWords().hives;
  const { of, type, leave, done, finished, said, found, changes, grid } = useHiveLookGrid(view);
  return (
    <>
      <p className="soft" aria-live="polite">
        {sheet.progress(done, view.rows.length)}
      </p>
      <div className="table-scroll">
        <table className="look-grid" ref={grid.table} onKeyDown={grid.onKeyDown} aria-label={sheet.title}>
          <thead>
            <tr>
              {Object.entries(sheet.columns).map(([key, title]) => (
                <th key={key} scope="col">
                  {title}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {view.rows.map((row, index) => (
              <HiveRow
                key={row.id}
                row={row}
                look={of(row)}
                said={said.get(row.id)}
                found={found(row.id)}
                current={index === grid.current}
                onFocus={() => grid.setCurrent(index)}
                onType={(change) => type(row, change)}
                onLeave={() => leave(row)}
              />
            ))}
          </tbody>
        </table>
      </div>
      {finished ? <EveningEnd summary={sheet.summary(done)} changes={changes} /> : null}
      <p className="legend soft">{sheet.keys}</p>
    </>
  );
}

interface HiveRowProps {
  readonly row: HiveLookRow;
  readonly look: TypedHiveLook;
  readonly said: RowSaid | undefined;
  /** Typed before the sheet was opened, and not saved. */
  readonly found: boolean;
  readonly current: boolean;
  readonly onFocus: () => void;
  readonly onType: (change: Partial<TypedHiveLook>) => void;
  readonly onLeave: () => void;
}

function HiveRow({ row, look, said, found, current, onFocus, onType, onLeave }: HiveRowProps) {
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
      <tr data-row className={current ? 'current' : undefined} onFocus={onFocus}>
        <th scope="row">{[row.code, row.name].filter(Boolean).join(' ')}</th>
        <td>{[row.yard, row.place].filter(Boolean).join(', ')}</td>
        <td>{row.last ? `${days.short(row.last.lookedOn)} ${row.last.note}` : words.one.noLooks}</td>
        {field('strength', '3.4rem')}
        {field('food', '3.4rem')}
        {field('note', '16rem')}
        <td>
          <SavedSign state={said?.state ?? (row.typed ? 'saved' : null)} />
        </td>
      </tr>
      <Beside row={row} said={said} found={found} />
    </>
  );
}

/** What must be known before the lid is lifted, and what is odd about the row. */
function Beside({ row, said, found }: Pick<HiveRowProps, 'row' | 'said' | 'found'>) {
  const { hives: words, frame } = useWords();
  const days = useDays();
  const told = said && (said.refusal || said.notReached || said.notices.length > 0) ? said : null;
  const reasons = leaveAloneTexts(row, words, days.short);
  if (!told && !found && reasons.length === 0) return null;
  return (
    <tr>
      <td colSpan={7}>
        {reasons.map((reason) => (
          <p key={reason} className="hands-off">
            <HandsOffSign /> {row.code}: {reason}
          </p>
        ))}
        {found ? <p className="line-notice">{frame.rowDraft}</p> : null}
        {told ? <ChangeLines refusal={told.refusal} notices={told.notices} notReached={told.notReached} /> : null}
      </td>
    </tr>
  );
}
