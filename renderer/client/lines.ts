type Line = <Answer>(call: () => Promise<Answer>, signal?: AbortSignal | null) => Promise<Answer>;

/**
 * Lets at most so many calls be on their way at once. Of those that wait the newest goes first: it is the one the person
 * looks at. One whose signal says that nobody waits for it any more is never made.
 */
export function atMost(limit: number): Line {
  const waiting: (() => void)[] = [];
  let underWay = 0;
  const turn = (signal: AbortSignal | null | undefined) =>
    new Promise<void>((begin, giveUp) => {
      waiting.push(begin);
      signal?.addEventListener('abort', () => {
        const at = waiting.indexOf(begin);
        if (at < 0) return;
        waiting.splice(at, 1);
        giveUp(signal.reason);
      });
    });
  return async (call, signal) => {
    if (underWay < limit) underWay += 1;
    else await turn(signal);
    try {
      return await call();
    } finally {
      // The place is handed on, so that nobody comes between.
      const next = waiting.pop();
      if (next) next();
      else underWay -= 1;
    }
  };
}
