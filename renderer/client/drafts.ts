import { type QueryClient, useQuery, useQueryClient } from '@tanstack/react-query';
import { type Dispatch, type SetStateAction, useEffect, useRef, useState } from 'react';
import type { Drafts } from '../../shared/contract/drafts.ts';
import { useFollowing } from '../components/following.ts';
import { ask } from './client.ts';
import { keepDraft, listedDrafts } from './draft-keeping.ts';
import { draftOf, sameValue } from './draft-text.ts';
import { useAnswer } from './hooks.ts';

export interface Draft<Value> {
  readonly value: Value;
  readonly set: Dispatch<SetStateAction<Value>>;
  /** True while the value is one that was typed before the page was last left, and is not saved. */
  readonly found: boolean;
  /** The value was saved under another key, or given up. */
  readonly forget: () => void;
}

/** What is half typed in the open workbook. The key is the one its list is kept under in the page. */
export function useDrafts() {
  const open = useAnswer(['workbook'], () => ask.workbook.getWorkbookState.query());
  const key = draftsKey(open.data?.open?.file ?? '');
  const list = useQuery({
    queryKey: key,
    queryFn: () => listedDrafts(key[1]),
    enabled: open.data !== undefined,
  });
  // A list that cannot be read must not keep a sheet from being drawn.
  return { file: key[1], list: list.isError ? NO_DRAFTS : list.data };
}

const NO_DRAFTS: Drafts = {};

const draftsKey = (file: string) => ['drafts', file] as const;

/**
 * A value as typed, that follows the saved one and is kept while it differs from it: it is there again after a turn to
 * another page, a crash or a power cut.
 */
export function useDraft<Value>(key: string, saved: Value): Draft<Value> {
  const keep = useKeeping();
  const { list } = useDrafts();
  const [value, set] = useFollowing(saved);
  const [looked, setLooked] = useState(false);
  const [found, setFound] = useState(false);
  const text = sameValue(value, saved) ? null : JSON.stringify(value);
  if (!looked && list) {
    setLooked(true);
    // Who typed before the list was here keeps the typing.
    const kept = text === null ? draftOf(list[key], saved) : null;
    if (kept !== null && !sameValue(kept, saved)) {
      set(kept);
      setFound(true);
    }
  }
  // Once saved or given up, nothing is kept until the person types again: the saved value may still be on its way here.
  const settled = useRef(false);
  useEffect(() => {
    if ((looked || text !== null) && !settled.current) keep(key, text);
  });
  const type: Dispatch<SetStateAction<Value>> = (next) => {
    settled.current = false;
    set(next);
  };
  const forget = () => {
    settled.current = true;
    setFound(false);
    set(saved);
    keep(key, null);
  };
  return { value, set: type, found: found && text !== null, forget };
}

/** Keeps a text under its key, or forgets it: the page's own list knows at once, the core soon. */
export function useKeeping(): (key: string, text: string | null) => void {
  const queries = useQueryClient();
  const { file } = useDrafts();
  return (key, text) => keepIn(queries, file, key, text);
}

function keepIn(queries: QueryClient, file: string, key: string, text: string | null): void {
  const list = queries.getQueryData<Drafts>(draftsKey(file));
  // As long as the list is on its way it is not made up here: sheets would take it for the whole.
  if (list) {
    const { [key]: before = null, ...others } = list;
    if (before === text) return;
    queries.setQueryData<Drafts>(draftsKey(file), text === null ? others : { ...others, [key]: text });
  }
  keepDraft(file, key, text);
}
