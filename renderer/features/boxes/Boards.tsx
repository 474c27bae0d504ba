import { useRef } from 'react';
import type { BoxLine } from '../../../shared/contract/boxes.ts';
import { useLongRows, WHOLE_LIST_ROWS } from '../../components/use-long-rows.ts';
import { useTilesAcross } from '../../components/use-tiles-across.ts';
import { useWords } from '../../components/words.ts';
import { BoxTile } from './BoxTile.tsx';
import type { BoxWalk } from './box-walk.ts';
import { type BoardColumn, boardColumns, placeLines } from './boxes-of-state.ts';
import { StateSign } from './StateSign.tsx';
import { type Choosing, keepSpace } from './use-choosing.ts';

interface BoardProps {
  readonly boxes: readonly BoxLine[];
  readonly choosing: Choosing;
}

/** Pixels of a tile or a line of them, until it is measured. */
const TILE_HEIGHT = 90;
/** A board of more boxes draws what is in the window; of fewer, all. */
const wholeUpTo = (boxes: number) => (boxes <= WHOLE_LIST_ROWS ? Number.POSITIVE_INFINITY : 0);

/** Tiles are the options of a list in which several can be chosen (ARIA authoring practices, listbox). */
const LISTBOX = { role: 'listbox', 'aria-multiselectable': true } as const;

/** One column a state. */
export function StateBoard({ boxes, choosing }: BoardProps) {
  const columns = boardColumns(boxes);
  const walk: BoxWalk = { run: 'down', lines: columns.map((column) => column.boxes.map((box) => box.id)) };
  const whole = wholeUpTo(boxes.length);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the tiles have the focus, their keys are heard here
    <div className="state-board" onKeyDown={(event) => choosing.onKeyDown(walk, event)} onKeyUp={keepSpace}>
      {columns.map((column) => (
        <StateColumn key={column.state} {...{ column, choosing, walk, whole }} />
      ))}
    </div>
  );
}

interface StateColumnProps {
  readonly column: BoardColumn;
  readonly choosing: Choosing;
  readonly walk: BoxWalk;
  readonly whole: number;
}

function StateColumn({ column: { state, boxes }, choosing, walk, whole }: StateColumnProps) {
  const { boxes: words } = useWords();
  const top = useRef<HTMLUListElement>(null);
  const long = useLongRows(boxes.length, TILE_HEIGHT, top, whole);
  return (
    <section aria-label={`${words.states[state]}, ${boxes.length}`}>
      <h3>
        <StateSign state={state} /> {words.states[state]} <span className="soft">{boxes.length}</span>
      </h3>
      {boxes.length === 0 ? <p className="soft small">{words.none}</p> : null}
      <ul ref={top} className="tiles" {...(boxes.length > 0 ? { ...LISTBOX, 'aria-label': words.states[state] } : {})}>
        <RoomItem height={long.before} />
        {long.drawn.map((index) => {
          const box = boxes[index];
          return box ? (
            <li key={box.id} role="none" ref={long.measure} data-index={index}>
              <BoxTile
                box={box}
                sayState={false}
                chosen={choosing.ids.has(box.id)}
                place={{ 'aria-posinset': index + 1, 'aria-setsize': boxes.length }}
                onClick={(event) => choosing.onClick(walk, box.id, event)}
              />
            </li>
          ) : null;
        })}
        <RoomItem height={long.after} />
      </ul>
    </section>
  );
}

/** Tiles as the boxes stand: by yard and row, in walking order. */
export function PlaceBoard({ boxes, choosing }: BoardProps) {
  const { boxes: words } = useWords();
  const top = useRef<HTMLDivElement>(null);
  const across = useTilesAcross(top);
  const lines = placeLines(boxes, across, { yard: words.noYard, row: words.noRow });
  const long = useLongRows(lines.length, TILE_HEIGHT, top, wholeUpTo(boxes.length));
  const walk: BoxWalk = {
    run: 'across',
    lines: lines.flatMap((line) => (line.kind === 'tiles' ? [line.boxes.map((box) => box.id)] : [])),
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the tiles have the focus, their keys are heard here
    <div ref={top} onKeyDown={(event) => choosing.onKeyDown(walk, event)} onKeyUp={keepSpace}>
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
              <div
                className="board"
                role="listbox"
                aria-multiselectable="true"
                aria-label={[line.boxes[0]?.yard ?? words.noYard, line.boxes[0]?.row ?? words.noRow].join(', ')}
              >
                {line.boxes.map((box) => (
                  <BoxTile
                    key={box.id}
                    box={box}
                    sayState
                    chosen={choosing.ids.has(box.id)}
                    onClick={(event) => choosing.onClick(walk, box.id, event)}
                  />
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
