import type { FeedingRow, FeedingSheetView } from '../../../shared/contract/feeding.ts';
import type { RowSaid } from '../../client/use-row-saving.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { EveningEnd } from '../../components/EveningEnd.tsx';
import { FeedingText } from '../../components/FeedingText.tsx';
import { HandsOffSign } from '../../components/HandsOffSign.tsx';
import { SavedSign } from '../../components/SavedSign.tsx';
import { useDays, useWords } from '../../components/words.ts';
import { isNoFeeding, type SheetFeed, type TypedFeeding } from './typed-feeding.ts';
import { useFeedingGrid } from './use-feeding-grid.ts';

/** Enter goes down a row, Tab goes across; a row is saved when a field of it is left. */
export function FeedingGrid({ view, sheet }: { view: FeedingSheetView; sheet: SheetFeed }) {
  const { feeding: words } = useWords();
  const { of, type, leave, done, finished, said, found, changes, grid } = useFeedingGrid(view, sheet);
  return (
    <>
      <p className="soft" aria-live="polite">
        {words.progress(done, view.rows.length)}
      </p>
      <div className="table-scroll">
        <table className="look-grid" ref={grid.table} onKeyDown={grid.onKeyDown} aria-label={words.title}>
          <thead>
            <tr>
              {Object.entries(words.columns).map(([key, title]) => (
                <th key={key} scope="col">
                  {title}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {view.rows.map((row, index) => (
              <Row
                key={row.id}
                row={row}
                typed={of(row)}
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
      {finished ? <EveningEnd summary={words.summary(done)} changes={changes} /> : null}
      <p className="legend soft">{words.keys}</p>
    </>
  );
}

interface RowProps {
  readonly row: FeedingRow;
  readonly typed: TypedFeeding;
  readonly said: RowSaid | undefined;
  /** Typed before the sheet was opened, and not saved. */
  readonly found: boolean;
  readonly current: boolean;
  readonly onFocus: () => void;
  readonly onType: (change: Partial<TypedFeeding>) => void;
  readonly onLeave: () => void;
}

function Row({ row, typed, said, found, current, onFocus, onType, onLeave }: RowProps) {
  const { feeding: words } = useWords();
  const field = (key: keyof TypedFeeding, width: string) => (
    <input
      className="control"
      style={{ width, minHeight: 34 }}
      aria-label={`${row.code}, ${words.columns[key]}`}
      data-now={key === 'amount' ? '' : undefined}
      data-note={key === 'note' ? '' : undefined}
      autoComplete="off"
      value={typed[key]}
      onChange={(event) => onType({ [key]: event.target.value })}
      onBlur={onLeave}
    />
  );
  // An emptied row says nothing: there is no feeding that could be saved.
  const state = said && (said.state !== 'saved' || !isNoFeeding(typed)) ? said.state : row.typed ? 'saved' : null;
  return (
    <>
      <tr data-row className={current ? 'current' : undefined} onFocus={onFocus}>
        <th scope="row">{[row.code, row.name].filter(Boolean).join(' ')}</th>
        <td>{row.where.join(', ')}</td>
        <td>{row.last ? <FeedingText feeding={row.last} /> : words.never}</td>
        <td className="nowrap">
          {field('amount', '6.4rem')} <SavedSign state={state} />
        </td>
        <td>{field('note', '11rem')}</td>
      </tr>
      <Beside row={row} said={said} found={found} />
    </>
  );
}

/** What must be known before the lid is lifted, and what is odd about the row. */
function Beside({ row, said, found }: Pick<RowProps, 'row' | 'said' | 'found'>) {
  const { feeding: words, frame } = useWords();
  const days = useDays();
  const told = said && (said.refusal || said.notReached || said.notices.length > 0) ? said : null;
  if (!told && !found && row.handsOffUntil === null) return null;
  return (
    <tr>
      <td colSpan={5}>
        {row.handsOffUntil === null ? null : (
          <p className="hands-off">
            <HandsOffSign /> {words.handsOff(row.code, days.short(row.handsOffUntil))}
          </p>
        )}
        {found ? <p className="line-notice">{frame.rowDraft}</p> : null}
        {told ? <ChangeLines refusal={told.refusal} notices={told.notices} notReached={told.notReached} /> : null}
      </td>
    </tr>
  );
}
