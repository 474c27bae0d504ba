import type { Remedy } from '../../shared/biology/remedies.ts';
import { useWords } from './words.ts';

interface RemediesProps {
  readonly remedies: readonly Remedy[];
  readonly source: string;
}

/** What may help, the likeliest first, and where that comes from; nothing where nothing is called for. */
export function Remedies({ remedies, source }: RemediesProps) {
  const {
    batches: { one },
    remedies: texts,
    sources,
  } = useWords();
  if (remedies.length === 0) return null;
  return (
    <div className="remedies small" role="note" aria-label={one.mayHelp}>
      <strong>{one.mayHelp}</strong>
      <ul>
        {remedies.map((remedy) => (
          <li key={remedy}>{texts[remedy]}</li>
        ))}
      </ul>
      <p className="soft">
        {one.source}: {sources.told(source)}
      </p>
    </div>
  );
}
