import type { TraitFigure } from '../../../shared/contract/stock.ts';
import { useWords } from '../../components/words.ts';

interface TraitValueProps {
  readonly figure: TraitFigure;
  readonly fewest: number;
  /** How the value is written; to one decimal where nothing is said. */
  readonly say?: (value: number) => string;
  readonly none?: string;
}

/** A figure that never stands without its n, and says so where it rests on too little. */
export function TraitValue({ figure: { n, value, enough }, fewest, say, none }: TraitValueProps) {
  const { stock } = useWords();
  if (value === null) return <span className="soft">{none ?? stock.none}</span>;
  return (
    <span className={enough ? undefined : 'soft'}>
      <strong>{(say ?? stock.figure)(value)}</strong> <span className="soft nowrap">{stock.n(n)}</span>
      {enough ? null : (
        <>
          <br />
          <span className="small">{stock.tooFew(n, fewest)}</span>
        </>
      )}
    </span>
  );
}
