import { useRef, useState } from 'react';
import { type CodeKey, type CodeTyping, codeAfter, type HeldKey, SCAN_GAP_MS } from './code-typing.ts';

interface CodeTypingUse {
  readonly codes: readonly string[];
  readonly isResult: (key: string) => boolean;
  readonly jump: (row: number) => void;
  /** Keys that were held and turn out to be results. */
  readonly giveBack: (keys: readonly HeldKey[]) => void;
}

/** Watches the grid's keys for a scanned or typed box code. `take` is true when the key was part of one. */
export function useCodeTyping({ codes, isResult, jump, giveBack }: CodeTypingUse) {
  const [typing, setTyping] = useState<CodeTyping | null>(null);
  const [noSuchCode, setNoSuchCode] = useState<string | null>(null);
  const now = useRef<CodeTyping | null>(null);
  const timer = useRef(0);
  const hold = (next: CodeTyping | null) => {
    window.clearTimeout(timer.current);
    now.current = next;
    setTyping(next);
    if (next === null || next.byHand) return;
    timer.current = window.setTimeout(() => {
      hold(null);
      giveBack(next.held);
    }, SCAN_GAP_MS);
  };
  const take = (pressed: CodeKey): boolean => {
    setNoSuchCode(null);
    const answer = codeAfter(now.current, pressed, codes, isResult);
    hold(answer.kind === 'held' ? answer.typing : null);
    if (answer.kind === 'jump') jump(answer.row);
    if (answer.kind === 'no-such-code') setNoSuchCode(answer.code);
    if ('before' in answer && answer.before.length > 0) giveBack(answer.before);
    return answer.kind !== 'for-the-grid';
  };
  /** What was held and can go on no longer is given back at once. */
  const flush = () => {
    const held = now.current?.byHand === false ? now.current.held : [];
    hold(null);
    if (held.length > 0) giveBack(held);
  };
  return { typing, noSuchCode, take, flush };
}
