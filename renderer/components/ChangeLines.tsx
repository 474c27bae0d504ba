import type { Notice, Refusal } from '../../shared/contract/refusal.ts';
import { noticeSentence, refusalSentence } from '../../shared/text/english/refusals.ts';
import { useDays, useDegrees, useWords } from './words.ts';

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
  const days = useDays();
  const degrees = useDegrees();
  const elsewhere = refusal && !('field' in refusal && ownFields.includes(refusal.field));
  return (
    <>
      {elsewhere ? (
        <p className="line-problem" role="alert">
          {refusalSentence(refusal, days.short, degrees)}
        </p>
      ) : null}
      {notReached ? (
        <p className="line-problem" role="alert">
          {words.frame.notReached}
        </p>
      ) : null}
      {notices.map((notice) => (
        <p key={JSON.stringify(notice)} className="line-notice" role="status">
          {noticeSentence(notice, days.short)}
        </p>
      ))}
    </>
  );
}

/** The sentence about one field, or null when the refusal is about another. */
export function useProblemOf(refusal: Refusal | null): (...fields: readonly string[]) => string | null {
  const days = useDays();
  const degrees = useDegrees();
  return (...fields) =>
    refusal && 'field' in refusal && fields.includes(refusal.field)
      ? refusalSentence(refusal, days.short, degrees)
      : null;
}
