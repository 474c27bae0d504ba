import type { Notice, Refusal } from '../../shared/contract/refusal.ts';
import { useSentences, useWords } from './words.ts';

export interface ChangeLinesProps {
  readonly refusal: Refusal | null;
  readonly notices?: readonly Notice[];
  readonly notReached?: boolean;
  /** Fields that show their own sentence; a refusal of one of them is not said twice. */
  readonly ownFields?: readonly string[];
}

/** What came of a change, where no single field is to blame. */
export function ChangeLines({ refusal, notices = [], notReached = false, ownFields = [] }: ChangeLinesProps) {
  const words = useWords();
  const say = useSentences();
  const elsewhere = refusal && !('field' in refusal && ownFields.includes(refusal.field));
  return (
    <>
      {elsewhere ? (
        <p className="line-problem" role="alert">
          {say.refusal(refusal)}
        </p>
      ) : null}
      {notReached ? (
        <p className="line-problem" role="alert">
          {words.frame.notReached}
        </p>
      ) : null}
      {notices.map((notice) => (
        <p key={JSON.stringify(notice)} className="line-notice" role="status">
          {say.notice(notice)}
        </p>
      ))}
    </>
  );
}

/** The sentence about one field, or null when the refusal is about another. */
export function useProblemOf(refusal: Refusal | null): (...fields: readonly string[]) => string | null {
  const say = useSentences();
  return (...fields) => (refusal && 'field' in refusal && fields.includes(refusal.field) ? say.refusal(refusal) : null);
}
