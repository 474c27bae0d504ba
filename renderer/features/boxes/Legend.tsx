import { RESULT_KEYS } from '../../../shared/model/look-key.ts';
import { useWords } from '../../components/words.ts';

/** The keys, always in sight. */
export function Legend() {
  const { boxes, looks } = useWords();
  const { sheet } = boxes;
  return (
    <section className="legend" aria-label={sheet.legend}>
      {RESULT_KEYS.map(({ result, key, digit }) => (
        <span key={result} className="nowrap">
          <kbd>{key}</kbd> <kbd>{digit}</kbd> {looks[result].name}
        </span>
      ))}
      {[sheet.shift, sheet.note, sheet.more, sheet.correct, sheet.fill, sheet.finish].map((hint) => (
        <span key={hint} className="soft nowrap">
          {hint}
        </span>
      ))}
    </section>
  );
}
