import { useQueryClient } from '@tanstack/react-query';
import { useCallback, useEffect, useState } from 'react';
import type { TodayView } from '../../shared/contract/today.ts';
import { ask } from './client.ts';

/** Today as it stood when the typing began, and as it stands when it is finished; all of it can be taken back at once. */
export function useTodayChanges() {
  const [before, setBefore] = useState<TodayView | null>(null);
  const [after, setAfter] = useState<TodayView | null>(null);
  const [firstChange, setFirstChange] = useState<number | null>(null);
  const [takenBack, setTakenBack] = useState<number | null>(null);
  const queries = useQueryClient();
  useEffect(() => {
    let wanted = true;
    // Without an answer the end of the typing says only what was saved.
    ask.today.getToday.query().then(
      (view) => wanted && setBefore(view),
      () => undefined,
    );
    ask.history.listSteps.query({ before: null, limit: 1 }).then(
      ({ steps }) => wanted && setFirstChange((steps[0]?.id ?? 0) + 1),
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, []);
  const compare = useCallback(() => {
    setTakenBack(null);
    return ask.today.getToday.query().then(setAfter, () => undefined);
  }, []);
  const undoAll = async () => {
    if (firstChange === null) return;
    const undone = await ask.history.undoFrom.mutate({ step: firstChange }).catch(() => null);
    if (!undone?.ok) return;
    setTakenBack(undone.value.length);
    await queries.invalidateQueries();
  };
  return { before, after, compare, takenBack, undoAll: firstChange === null ? null : () => void undoAll() };
}
