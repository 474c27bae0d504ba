import { useEffect, useState } from 'react';
import { loadWords } from '../../shared/text/load-words.ts';
import { useFirstWords } from './words.ts';

/**
 * A part of the page that is fetched, with all words, once it is wanted; null until both are here. Unlike a lazy part it is
 * drawn the moment it comes, so that no key typed into it is lost.
 */
export function useFetched<Part>(fetchPart: () => Promise<Part>, wanted: boolean): Part | null {
  const { language } = useFirstWords();
  const [part, setPart] = useState<{ readonly part: Part } | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: which part is fetched never changes
  useEffect(() => {
    if (!wanted || part) return;
    Promise.all([fetchPart(), loadWords(language)]).then(
      ([fetched]) => setPart({ part: fetched }),
      () => undefined,
    );
  }, [wanted, part, language]);
  return part?.part ?? null;
}
