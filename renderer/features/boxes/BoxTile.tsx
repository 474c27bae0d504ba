import type { BoxLine } from '../../../shared/contract/boxes.ts';
import { useDays, useWords } from '../../components/words.ts';
import { StateSign } from './StateSign.tsx';

/** One box on the board: code, state in words, day and what comes next. */
export function BoxTile({ box, sayState, onChoose }: { box: BoxLine; sayState: boolean; onChoose: () => void }) {
  const { boxes: words } = useWords();
  const days = useDays();
  const since = box.daysSinceEmergence === null || box.state === 'free' ? null : words.day(box.daysSinceEmergence);
  return (
    <button type="button" className={`tile${box.handsOffUntil ? ' hatch' : ''}`} onClick={onChoose}>
      <span className="code-large">
        <StateSign state={box.state} />
        {box.code}
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

/** Of a free box only what is news today: still resting, or its bees too long without a queen. */
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
