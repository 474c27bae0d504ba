import type { Drafts } from '../../shared/contract/drafts.ts';
import { ask } from './client.ts';

/** Milliseconds after the last key before a draft goes to the core. */
const PAUSE = 250;

/** What the core is about to be told, by workbook file and key, until it has answered. */
const telling = new Map<string, Map<string, string | null>>();
const waiting = new Map<string, ReturnType<typeof setTimeout>>();
let line: Promise<unknown> = Promise.resolve();

/** The core's list may be of the moment before it was told: what was on its way when it was asked, or is now, comes first. */
export async function listedDrafts(file: string): Promise<Drafts> {
  const before = [...(telling.get(file) ?? [])];
  const list = Object.entries(await ask.drafts.listDrafts.query());
  const known = new Map<string, string | null>([...list, ...before, ...(telling.get(file) ?? [])]);
  return Object.fromEntries([...known].flatMap(([key, text]) => (text === null ? [] : [[key, text]])));
}

/** The core is told when the typing pauses, also when the page is left before that; what is saved is forgotten at once. */
export function keepDraft(file: string, key: string, text: string | null): void {
  const own = telling.get(file) ?? new Map<string, string | null>();
  telling.set(file, own.set(key, text));
  clearTimeout(waiting.get(key));
  const send = () => {
    waiting.delete(key);
    // One after the other, so that nothing forgotten is overtaken. A draft that cannot be kept is no trouble to speak of.
    line = line.then(() => ask.drafts.keepDraft.mutate({ key, text })).catch(() => {});
    void line.then(() => {
      if (own.get(key) === text) own.delete(key);
    });
  };
  if (text === null) send();
  else waiting.set(key, setTimeout(send, PAUSE));
}
