import { type Dispatch, type SetStateAction, useState } from 'react';

/**
 * What a field shows: the saved value, and from the first keystroke what is typed. When the saved value changes (an undo,
 * another form) a field that was not being typed in follows it; one that was keeps its typing.
 */
export function useFollowing<Value>(saved: Value): readonly [Value, Dispatch<SetStateAction<Value>>] {
  const [seen, setSeen] = useState(saved);
  const [typed, setTyped] = useState(saved);
  if (!isSame(seen, saved)) {
    setSeen(saved);
    const next = followed({ seen, typed, saved });
    setTyped(next);
    return [next, setTyped];
  }
  return [typed, setTyped];
}

/** What is shown after the saved value went from `seen` to `saved`. */
export function followed<Value>({
  seen,
  typed,
  saved,
}: {
  readonly seen: Value;
  readonly typed: Value;
  readonly saved: Value;
}): Value {
  return isSame(typed, seen) ? saved : typed;
}

/** Fields hold texts, numbers, days, or plain objects of them. */
const isSame = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);
