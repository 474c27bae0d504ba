import { useRef } from 'react';
import type { BoxLine } from '../../../shared/contract/boxes.ts';
import { useLongRows, WHOLE_LIST_ROWS } from '../../components/use-long-rows.ts';
import { useTilesAcross } from '../../components/use-tiles-across.ts';
import { useWords } from '../../components/words.ts';
import { BoxTile } from './BoxTile.tsx';
import { type BoardColumn, boardColumns, placeLines } from './boxes-of-state.ts';
import { StateSign } from './StateSign.tsx';

interface BoardProps {
  readonly boxes: readonly BoxLine[];
  readonly onChoose: (boxId: string) => void;
}

/** Pixels of a tile or a line of them, until it is measured. */
const TILE_HEIGHT = 90;
/** A board of more boxes draws what is in the window; of fewer, all. */
const wholeUpTo = (boxes: number) => (boxes <= WHOLE_LIST_ROWS ? Number.POSITIVE_INFINITY : 0);

/** One column a state. */
export function StateBoard({ boxes, onChoose }: BoardProps) {
  return (
    <div className="state-board">
      {boardColumns(boxes).map((column) => (
        <StateColumn key={column.state} column={column} onChoose={onChoose} whole={wholeUpTo(boxes.length)} />
      ))}
    </div>
  );
}

interface StateColumnProps {
  readonly column: BoardColumn;
  readonly onChoose: (boxId: string) => void;
  readonly whole: number;
}

function StateColumn({ column: { state, boxes }, onChoose, whole }: StateColumnProps) {
  const { boxes: words } = useWords();
  const top = useRef<HTMLUListElement>(null);
  const long = useLongRows(boxes.length, TILE_HEIGHT, top, whole);
  return (
    <section aria-label={`${words.states[state]}, ${boxes.length}`}>
      <h3>
        <StateSign state={state} /> {words.states[state]} <span className="soft">{boxes.length}</span>
      </h3>
      {boxes.length === 0 ? <p className="soft small">{words.none}</p> : null}
      <ul ref={top} className="tiles">
        <RoomItem height={long.before} />
        {long.drawn.map((index) => {
          const box = boxes[index];
          return box ? (
            <li
              key={box.id}
              ref={long.measure}
              data-index={index}
              aria-posinset={index + 1}
              aria-setsize={boxes.length}
            >
              <BoxTile box={box} sayState={false} onChoose={() => onChoose(box.id)} />
            </li>
          ) : null;
        })}
        <RoomItem height={long.after} />
      </ul>
    </section>
  );
}

/** Tiles as the boxes stand: by yard and row, in walking order. */
export function PlaceBoard({ boxes, onChoose }: BoardProps) {
  const { boxes: words } = useWords();
  const top = useRef<HTMLDivElement>(null);
  const across = useTilesAcross(top);
  const lines = placeLines(boxes, across, { yard: words.noYard, row: words.noRow });
  const long = useLongRows(lines.length, TILE_HEIGHT, top, wholeUpTo(boxes.length));
  return (
    <div ref={top}>
      <Room height={long.before} />
      {long.drawn.map((index) => {
        const line = lines[index];
        if (!line) return null;
        const key = line.kind === 'tiles' ? (line.boxes[0]?.id ?? '') : `${line.kind} ${line.yard} ${line.name}`;
        return (
          <div key={key} className="board-line" ref={long.measure} data-index={index}>
            {line.kind === 'yard' ? <h3>{line.name}</h3> : null}
            {line.kind === 'row' ? <h4>{line.name}</h4> : null}
            {line.kind === 'tiles' ? (
              <div className="board">
                {line.boxes.map((box) => (
                  <BoxTile key={box.id} box={box} sayState onChoose={() => onChoose(box.id)} />
                ))}
              </div>
            ) : null}
          </div>
        );
      })}
      <Room height={long.after} />
    </div>
  );
}

/** Keeps the room of what is not drawn. */
const Room = ({ height }: { height: number }) => (height > 0 ? <div aria-hidden="true" style={{ height }} /> : null);
const RoomItem = ({ height }: { height: number }) =>
  height > 0 ? <li aria-hidden="true" style={{ height, padding: 0 }} /> : null;
