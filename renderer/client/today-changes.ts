import { useCallback, useEffect, useState } from 'react';
import type { TodayView } from '../../shared/contract/today.ts';
import { ask } from './client.ts';

/** Today as it stood when the typing began, and as it stands when it is finished. */
export function useTodayChanges() {
  const [before, setBefore] = useState<TodayView | null>(null);
  const [after, setAfter] = useState<TodayView | null>(null);
  useEffect(() => {
    let wanted = true;
    // Without an answer the end of the typing says only what was saved.
    ask.today.getToday.query().then(
      (view) => wanted && setBefore(view),
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, []);
  const compare = useCallback(() => ask.today.getToday.query().then(setAfter, () => undefined), []);
  return { before, after, compare };
}
