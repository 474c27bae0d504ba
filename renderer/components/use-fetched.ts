import { useEffect, useState } from 'react';
import { loadWords } from '../../shared/text/load-words.ts';
import { useFirstWords } from './words.ts';

export interface Fetched<Part> {
  /** Null until it is here. */
  readonly part: Part | null;
  /** It was wanted and could not be loaded. */
  readonly failed: boolean;
  readonly tryAgain: () => void;
}

/**
 * A part of the page that is fetched, with all words, once it is wanted. Unlike a lazy part it is drawn the moment it
 * comes, so that no key typed into it is lost; and where it does not come the page stays, with a sentence (PartFailed).
 */
export function useFetched<Part>(fetchPart: () => Promise<Part>, wanted: boolean): Fetched<Part> {
  const { language } = useFirstWords();
  const [part, setPart] = useState<{ readonly part: Part } | null>(null);
  const [failures, setFailures] = useState(0);
  const [attempt, setAttempt] = useState(1);
  // biome-ignore lint/correctness/useExhaustiveDependencies: which part is fetched never changes
  useEffect(() => {
    if (!wanted || part) return;
    Promise.all([fetchPart(), loadWords(language)]).then(
      ([fetched]) => setPart({ part: fetched }),
      () => setFailures(attempt),
    );
  }, [wanted, part, language, attempt]);
  return {
    part: part?.part ?? null,
    failed: wanted && !part && failures === attempt,
    tryAgain: () => setAttempt(attempt + 1),
  };
}
