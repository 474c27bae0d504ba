import type { LabelSheet } from '../../../shared/model/label-sheet.ts';
import { useWords } from '../../components/words.ts';

/** The sheet as it lies on the table: used, to be printed, free. A click says which label is the first free one. */
export function SheetPicture({
  sheet,
  startAt,
  labels,
  onChoose,
}: {
  sheet: LabelSheet;
  startAt: number;
  labels: number;
  onChoose: (n: number) => void;
}) {
  const { print: words } = useWords();
  const all = sheet.columns * sheet.rows;
  if (all <= 1) return null;
  const cell = (n: number) => (n < startAt ? 'used' : n < startAt + labels ? 'prints' : 'free');
  const text = { used: words.used, prints: words.willPrint, free: words.free };
  return (
    <div className="sheet-picture" style={{ gridTemplateColumns: `repeat(${sheet.columns}, 74px)` }}>
      {Array.from({ length: all }, (_, index) => index + 1).map((n) => (
        <button
          key={n}
          type="button"
          className={cell(n)}
          aria-label={words.labelN(n, text[cell(n)])}
          onClick={() => onChoose(n)}
        >
          {cell(n) === 'prints' ? n - startAt + 1 : ''}
        </button>
      ))}
    </div>
  );
}
