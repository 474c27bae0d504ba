import { type KeyboardEvent, useState } from 'react';
import type { LookRow } from '../../../shared/contract/boxes.ts';
import type { RowDrafts } from '../../client/row-drafts.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { type RowState, SavedSign } from '../../components/SavedSign.tsx';
import { useDays, useResultKeys, useWords } from '../../components/words.ts';
import type { LookChange, Said } from './look-typing.ts';
import { fieldId, type MoreField, sameText, TYPED_FIELDS, typedField } from './typed-fields.ts';

interface GridRowProps {
  readonly row: LookRow;
  readonly index: number;
  /** Measures the row in a long sheet. */
  readonly measure: ((element: HTMLElement | null) => void) | undefined;
  readonly current: boolean;
  /** The offered queen number while it is being confirmed. */
  readonly numbering: string | null;
  readonly said: Said | undefined;
  readonly state: RowState | null;
  readonly onPick: () => void;
  readonly onNumber: (number: string) => void;
  readonly onLeave: () => void;
  readonly onMore: (change: LookChange) => void;
  readonly drafts: RowDrafts<string>;
}

/** One box with what is said about it, in a body of its own so that both are measured together. */
export function GridRow(props: GridRowProps) {
  const { row, index, measure, current, numbering, said, state, onPick, onNumber, onLeave, onMore, drafts } = props;
  const { boxes, looks, frame } = useWords();
  const { sheet } = boxes;
  const found = TYPED_FIELDS.some((field) => drafts.found(fieldId(row.id, field)));
  const days = useDays();
  const last =
    row.lastResult && row.lastLookOn ? `${looks[row.lastResult].name}, ${days.short(row.lastLookOn)}` : sheet.noLook;
  const day = row.daysSinceEmergence === null ? '' : boxes.day(row.daysSinceEmergence);
  const key = useResultKeys().find((one) => one.result === row.typed?.result)?.key;
  const told = said && (said.refusal || said.notReached || said.notices.length > 0) ? said : null;
  return (
    <tbody ref={measure} data-index={index}>
      <tr data-row={index} aria-rowindex={index + 2} className={current ? 'current' : undefined} onClick={onPick}>
        <th scope="row">{row.code}</th>
        <td>{row.row ?? ''}</td>
        <td className="nowrap">{day}</td>
        <td className="nowrap">{last}</td>
        <td>
          <span
            className="now"
            data-now
            role="button"
            tabIndex={current ? 0 : -1}
            aria-label={
              row.typed
                ? `${row.code}, ${looks[row.typed.result].name}`
                : sheet.rowRead(row.code, row.row ?? boxes.noRow, day, last)
            }
          >
            {row.typed ? (
              <>
                <kbd>{key}</kbd> {looks[row.typed.result].name}
              </>
            ) : (
              ' '
            )}
          </span>
          <SavedSign state={state} />
        </td>
        <td>
          {numbering === null ? (
            (row.queenNumber ?? '')
          ) : (
            <NumberInput
              label={`${row.code}, ${sheet.columns.number}`}
              offered={numbering}
              onType={(number) => drafts.keep(fieldId(row.id, 'number'), number)}
              onNumber={onNumber}
              onLeave={onLeave}
            />
          )}
        </td>
        <MoreCells row={row} onMore={onMore} drafts={drafts} />
      </tr>
      {told || found ? (
        <tr>
          <td colSpan={9}>
            {found ? <p className="line-notice">{frame.rowDraft}</p> : null}
            {told ? <ChangeLines refusal={told.refusal} notices={told.notices} notReached={told.notReached} /> : null}
          </td>
        </tr>
      ) : null}
    </tbody>
  );
}

/** Enter takes the number and goes down; Escape leaves her without one. */
function NumberInput({
  label,
  offered,
  onType,
  onNumber,
  onLeave,
}: {
  label: string;
  offered: string;
  onType: (number: string) => void;
  onNumber: (number: string) => void;
  onLeave: () => void;
}) {
  const [number, setNumber] = useState(offered);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter' && number.trim() !== '') onNumber(number.trim());
    else if (event.key === 'Escape') onLeave();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <input
      className="control"
      style={{ width: '7rem', minHeight: 34 }}
      data-number
      aria-label={label}
      value={number}
      onChange={(event) => {
        setNumber(event.target.value);
        onType(event.target.value);
      }}
      onKeyDown={onKeyDown}
    />
  );
}

/** Strength, food and note: reached with Tab, saved when left. */
function MoreCells({ row, onMore, drafts }: Pick<GridRowProps, 'row' | 'onMore' | 'drafts'>) {
  const cell = (field: MoreField, width: string) => (
    <td>
      <MoreInput
        // Drawn anew when the saved value changes, as after an undo; refused text stays.
        key={typedField(row, field)}
        row={row}
        field={field}
        width={width}
        half={drafts.of(fieldId(row.id, field))}
        onType={(text) => drafts.keep(fieldId(row.id, field), sameText(text, typedField(row, field)) ? null : text)}
        onMore={onMore}
      />
    </td>
  );
  return (
    <>
      {cell('strength', '3.4rem')}
      {cell('food', '3.4rem')}
      {cell('note', '12rem')}
    </>
  );
}

interface MoreInputProps extends Pick<GridRowProps, 'row' | 'onMore'> {
  readonly field: MoreField;
  readonly width: string;
  /** What was typed and not saved; null when nothing was. */
  readonly half: string | null;
  readonly onType: (text: string) => void;
}

function MoreInput({ row, field, width, half, onType, onMore }: MoreInputProps) {
  const { sheet } = useWords().boxes;
  const [text, setText] = useState(half ?? typedField(row, field));
  return (
    <input
      className="control"
      style={{ width, minHeight: 34 }}
      aria-label={`${row.code}, ${sheet.columns[field]}`}
      data-note={field === 'note' ? '' : undefined}
      data-half={half === null ? undefined : ''}
      value={text}
      onChange={(event) => {
        setText(event.target.value);
        onType(event.target.value);
      }}
      onBlur={() => {
        const value = field === 'note' ? text.trim() || null : five(text);
        if (value !== (row.typed?.[field] ?? null)) onMore({ [field]: value });
      }}
    />
  );
}

/** What is no number goes to the core as 0, which it refuses with a sentence; the text stays as typed. */
const five = (text: string): number | null => (text.trim() === '' ? null : /^\d$/.test(text.trim()) ? Number(text) : 0);
