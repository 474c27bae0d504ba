import type { MouseEvent } from 'react';
import type { BoxLine } from '../../../shared/contract/boxes.ts';
import { useDays, useWords } from '../../components/words.ts';
import { StateSign } from './StateSign.tsx';

interface BoxTileProps {
  readonly box: BoxLine;
  readonly sayState: boolean;
  readonly chosen: boolean;
  /** Where it stands among those of its list, of which not all may be drawn. */
  readonly place?: { readonly 'aria-posinset': number; readonly 'aria-setsize': number };
  readonly onClick: (event: MouseEvent) => void;
}

/** One box on the board: code, state in words, day and what comes next. Enter opens it. */
export function BoxTile({ box, sayState, chosen, place, onClick }: BoxTileProps) {
  const { boxes: words } = useWords();
  const days = useDays();
  const since = box.daysSinceEmergence === null || box.state === 'free' ? null : words.day(box.daysSinceEmergence);
  return (
    <button
      type="button"
      role="option"
      aria-selected={chosen}
      {...place}
      data-box={box.id}
      className={`tile${box.handsOffUntil ? ' hatch' : ''}`}
      onClick={onClick}
    >
      <span className="code-large">
        <StateSign state={box.state} />
        {box.code}
        {chosen ? <ChosenMark /> : null}
      </span>
      {sayState ? <span>{words.states[box.state]}</span> : null}
      <span className="soft small">{[box.batch, since].filter(Boolean).join(', ')}</span>
      {box.handsOffUntil ? (
        <span className="hands-off small">{words.handsOff(days.short(box.handsOffUntil))}</span>
      ) : box.nextLookOn ? (
        <span className="small">{words.next(days.short(box.nextLookOn))}</span>
      ) : null}
      <FreeText box={box} />
      {box.proposal ? (
        <span className="small">▸ {words.proposals.what(box.proposal.kind, box.state === 'proved')}</span>
      ) : null}
    </button>
  );
}

/** Only what is news today: its bees too long without brood, or, of a free box, that it still rests. */
function FreeText({ box }: { box: BoxLine }) {
  const { boxes: words } = useWords();
  const { today, short } = useDays();
  if (box.layingWorkersFrom !== null && box.layingWorkersFrom <= today)
    return <span className="small notice">{words.layingWorkers(short(box.layingWorkersFrom))}</span>;
  if (box.freeFrom !== null && box.freeFrom > today)
    return <span className="small">{words.freeFrom(short(box.freeFrom))}</span>;
  if (box.ownCellsOn !== null && box.ownCellsOn >= today)
    return <span className="small">{words.ownCells(short(box.ownCellsOn))}</span>;
  return null;
}

/** Shown besides the frame, since colour alone says nothing to some; read aloud as the state of the option. */
export const ChosenMark = () => (
  <span className="chosen-mark" aria-hidden="true">
    ✓
  </span>
);
