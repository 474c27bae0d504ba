import type { YearColour } from '../../shared/biology/year-colour.ts';
import { YEAR_PAINT } from '../theme/tokens.ts';
import { useWords } from './words.ts';

/** A queen's paint: a disc with ink outline, the letter in it and the word beside it. */
export function YearColourMark({ colour }: { colour: YearColour }) {
  const words = useWords();
  const { paint, letter } = YEAR_PAINT[colour];
  const name = words.queens.colours[colour];
  return (
    <span className="nowrap">
      <svg
        width="20"
        height="20"
        viewBox="0 0 20 20"
        aria-hidden="true"
        style={{ verticalAlign: '-4px', marginInlineEnd: 6 }}
      >
        <circle cx="10" cy="10" r="8.5" fill={paint} stroke="var(--ink)" strokeWidth="1.5" />
        <text x="10" y="14" textAnchor="middle" fontSize="11" fontWeight="700" fill={letter}>
          {name.charAt(0).toUpperCase()}
        </text>
      </svg>
      {name}
    </span>
  );
}
