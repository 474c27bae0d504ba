import { type QueryClient, useQuery, useQueryClient } from '@tanstack/react-query';
import { type Dispatch, type SetStateAction, useEffect, useRef, useState } from 'react';
import type { Drafts } from '../../shared/contract/drafts.ts';
import { useFollowing } from '../components/following.ts';
import { ask } from './client.ts';
import { draftOf, sameValue } from './draft-text.ts';
import { useAnswer } from './hooks.ts';

/** Milliseconds after the last key before a draft goes to the core. */
const PAUSE = 250;

export interface Draft<Value> {
  readonly value: Value;
  readonly set: Dispatch<SetStateAction<Value>>;
  /** True while the value is one that was typed before the page was last left, and is not saved. */
  readonly found: boolean;
  /** The value was saved under another key, or given up. */
  readonly forget: () => void;
}

/**
 * A value as typed, that follows the saved one and is kept while it differs from it: it is there again after a turn to
 * another page, a crash or a power cut.
 */
export function useDraft<Value>(key: string, saved: Value): Draft<Value> {
  const queries = useQueryClient();
  const open = useAnswer(['workbook'], () => ask.workbook.getWorkbookState.query());
  const place = ['drafts', open.data?.open?.file ?? ''];
  const drafts = useQuery({
    queryKey: place,
    queryFn: () => ask.drafts.listDrafts.query(),
    enabled: open.data !== undefined,
  });
  const [value, set] = useFollowing(saved);
  const [looked, setLooked] = useState(false);
  const [found, setFound] = useState(false);
  if (!looked && drafts.data) {
    setLooked(true);
    const kept = draftOf(drafts.data[key], saved);
    if (kept !== null && !sameValue(kept, saved)) {
      set(kept);
      setFound(true);
    }
  }
  const text = sameValue(value, saved) ? null : JSON.stringify(value);
  // Once saved or given up, nothing is kept until the person types again: the saved value may still be on its way here.
  const settled = useRef(false);
  useEffect(() => {
    if (looked && !settled.current) keep(queries, place, key, text);
  });
  const type: Dispatch<SetStateAction<Value>> = (next) => {
    settled.current = false;
    set(next);
  };
  const forget = () => {
    settled.current = true;
    set(saved);
    keep(queries, place, key, null);
  };
  return { value, set: type, found: found && text !== null, forget };
}

/** Keys of which this page has told the core a text. */
const kept = new Set<string>();
const waiting = new Map<string, ReturnType<typeof setTimeout>>();

/** The page's own list knows at once; the core is told when the typing pauses, also when the page is left before that. */
function keep(queries: QueryClient, place: readonly string[], key: string, text: string | null): void {
  const known = queries.getQueryData<Drafts>(place) ?? {};
  // What is given up is always told: the list here may not know yet of what was kept a moment ago.
  if (text !== null && known[key] === text) return;
  if (text === null && known[key] === undefined && !kept.has(key)) return;
  const { [key]: _before, ...others } = known;
  queries.setQueryData<Drafts>(place, text === null ? others : { ...others, [key]: text });
  if (text !== null) kept.add(key);
  clearTimeout(waiting.get(key));
  const send = () => {
    waiting.delete(key);
    if (text === null) kept.delete(key);
    // A draft that cannot be kept is no trouble to speak of: the text is on the page.
    ask.drafts.keepDraft.mutate({ key, text }).catch(() => {});
  };
  waiting.set(key, setTimeout(send, PAUSE));
}
