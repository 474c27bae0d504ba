import type { FeedingRow, FeedingSheetView } from '../../../shared/contract/feeding.ts';
import type { RowSaid } from '../../client/use-row-saving.ts';
import { EveningEnd } from '../../components/EveningEnd.tsx';
import { FeedingText } from '../../components/FeedingText.tsx';
import { HandsOffSign } from '../../components/HandsOffSign.tsx';
import { RowSheet } from '../../components/RowSheet.tsx';
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
      <RowSheet
        title={words.title}
        columns={words.columns}
        rows={view.rows}
        idOf={(row) => row.id}
        said={said}
        found={(row) => found(row.id)}
        grid={grid}
        cells={(row) => (
          <Cells
            row={row}
            typed={of(row)}
            said={said.get(row.id)}
            onType={(change) => type(row, change)}
            onLeave={() => leave(row)}
          />
        )}
        warnings={(row) => (row.handsOffUntil === null ? [] : [<Warning key={row.id} row={row} />])}
        onGone={leave}
      />
      {finished ? <EveningEnd summary={words.summary(done)} changes={changes} /> : null}
      <p className="legend soft">{words.keys}</p>
    </>
  );
}

interface CellsProps {
  readonly row: FeedingRow;
  readonly typed: TypedFeeding;
  readonly said: RowSaid | undefined;
  readonly onType: (change: Partial<TypedFeeding>) => void;
  readonly onLeave: () => void;
}

function Cells({ row, typed, said, onType, onLeave }: CellsProps) {
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
      <th scope="row">{[row.code, row.name].filter(Boolean).join(' ')}</th>
      <td>{row.where.join(', ')}</td>
      <td>{row.last ? <FeedingText feeding={row.last} /> : words.never}</td>
      <td className="nowrap">
        {field('amount', '6.4rem')} <SavedSign state={state} />
      </td>
      <td>{field('note', '11rem')}</td>
    </>
  );
}

/** What must be known before the lid is lifted. */
function Warning({ row }: { row: FeedingRow }) {
  const { feeding: words } = useWords();
  const days = useDays();
  return (
    <p className="hands-off">
      <HandsOffSign /> {row.handsOffUntil === null ? null : words.handsOff(row.code, days.short(row.handsOffUntil))}
    </p>
  );
}
