import type { BoxLine } from '../../../shared/contract/boxes.ts';
import { Section } from '../../components/Section.tsx';
import { useWords } from '../../components/words.ts';
import { BoxTile } from './BoxTile.tsx';
import { boardColumns } from './boxes-of-state.ts';
import { StateSign } from './StateSign.tsx';

interface BoardProps {
  readonly boxes: readonly BoxLine[];
  readonly onChoose: (boxId: string) => void;
}

/** One column a state. */
export function StateBoard({ boxes, onChoose }: BoardProps) {
  const { boxes: words } = useWords();
  return (
    <div className="state-board">
      {boardColumns(boxes).map(({ state, boxes: ofState }) => (
        <section key={state} aria-label={`${words.states[state]}, ${ofState.length}`}>
          <h3>
            <StateSign state={state} /> {words.states[state]} <span className="soft">{ofState.length}</span>
          </h3>
          {ofState.length === 0 ? <p className="soft small">{words.none}</p> : null}
          {ofState.map((box) => (
            <BoxTile key={box.id} box={box} sayState={false} onChoose={() => onChoose(box.id)} />
          ))}
        </section>
      ))}
    </div>
  );
}

/** Tiles as the boxes stand: by yard and row, in walking order. */
export function PlaceBoard({ boxes, onChoose }: BoardProps) {
  const { boxes: words } = useWords();
  const yards = [...Map.groupBy(boxes, (box) => box.yard ?? words.noYard)];
  return yards.map(([yard, ofYard]) => (
    <Section key={yard} title={yard}>
      {[...Map.groupBy(ofYard, (box) => box.row ?? words.noRow)].map(([row, ofRow]) => (
        <div key={row} style={{ marginBottom: 16 }}>
          <h3 style={{ marginBottom: 6 }}>{row}</h3>
          <div className="board">
            {ofRow.map((box) => (
              <BoxTile key={box.id} box={box} sayState onChoose={() => onChoose(box.id)} />
            ))}
          </div>
        </div>
      ))}
    </Section>
  ));
}
