import { Button } from '@mui/material';
import type { BoxLine } from '../../../shared/contract/boxes.ts';
import { shortCodes } from '../../../shared/kernel/box-codes.ts';
import { goTo } from '../../components/routes.ts';
import { useWords } from '../../components/words.ts';

interface ChosenActsProps {
  readonly boxes: readonly BoxLine[];
  readonly onHandOut: (codes: string) => void;
  readonly onClear: () => void;
}

/** How many boxes are chosen, and what can be done with all of them at once. */
export function ChosenActs({ boxes, onHandOut, onClear }: ChosenActsProps) {
  const { chosen: words } = useWords().boxes;
  const codes = shortCodes(boxes.map((box) => box.code));
  return (
    <div className="chosen-acts no-print">
      <p className="soft small">{words.keys}</p>
      <div>
        <p role="status">{boxes.length === 0 ? '' : words.count(boxes.length, codes)}</p>
        {boxes.length === 0 ? null : (
          <div className="acts">
            <Button variant="outlined" onClick={() => goTo(`/boxes/feeding?boxes=${encodeURIComponent(codes)}`)}>
              {words.feed}
            </Button>
            <Button variant="outlined" onClick={() => onHandOut(codes)}>
              {words.handOut}
            </Button>
            <Button onClick={onClear}>{words.none}</Button>
          </div>
        )}
      </div>
    </div>
  );
}
