import { useEffect, useRef } from 'react';
import { useWords } from './words.ts';

/** Says that what stands in the form was typed before; a form that is folded away is unfolded for it. */
export function FoundDraft({ found }: { found: boolean }) {
  const { frame } = useWords();
  const line = useRef<HTMLParagraphElement>(null);
  useEffect(() => {
    if (found) line.current?.closest('details')?.setAttribute('open', '');
  }, [found]);
  if (!found) return null;
  return (
    <p className="line-notice" ref={line}>
      {frame.draft}
    </p>
  );
}
