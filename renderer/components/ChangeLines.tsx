import { Suspense } from 'react';
import type { Notice, Refusal } from '../../shared/contract/refusal.ts';
import { useFirstWords, useRefusalSentence, useSentences } from './words.ts';

export interface ChangeLinesProps {
  readonly refusal: Refusal | null;
  readonly notices?: readonly Notice[];
  readonly notReached?: boolean;
  /** Fields that show their own sentence; a refusal of one of them is not said twice. */
  readonly ownFields?: readonly string[];
}

/** What came of a change, where no single field is to blame. */
export function ChangeLines({ refusal, notices = [], notReached = false, ownFields = [] }: ChangeLinesProps) {
  const { frame } = useFirstWords();
  const elsewhere = refusal && !('field' in refusal && ownFields.includes(refusal.field)) ? refusal : null;
  return (
    <>
      {elsewhere || notices.length > 0 ? (
        // On the first page the sentences may still be on their way; the page itself must not wait for them.
        <Suspense fallback={null}>
          <SaidLines refusal={elsewhere} notices={notices} />
        </Suspense>
      ) : null}
      {notReached ? (
        <p className="line-problem" role="alert">
          {frame.notReached}
        </p>
      ) : null}
    </>
  );
}

function SaidLines({ refusal, notices }: { refusal: Refusal | null; notices: readonly Notice[] }) {
  const say = useSentences();
  return (
    <>
      {refusal ? (
        <p className="line-problem" role="alert">
          {say.refusal(refusal)}
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
  const said = useRefusalSentence(refusal);
  return (...fields) => (refusal && 'field' in refusal && fields.includes(refusal.field) ? said : null);
}
