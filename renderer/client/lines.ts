/**
 * Lets at most so many calls be on their way at once. Of those that wait the newest goes first: it is the one the person
 * looks at.
 */
export function atMost(limit: number): <Answer>(call: () => Promise<Answer>) => Promise<Answer> {
  const waiting: (() => void)[] = [];
  let underWay = 0;
  return async (call) => {
    if (underWay < limit) underWay += 1;
    else await new Promise<void>((begin) => waiting.push(begin));
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
