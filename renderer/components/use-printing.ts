import { useSyncExternalStore } from 'react';
import { flushSync } from 'react-dom';

const media = window.matchMedia('print');
let printing = media.matches;

function listen(changed: () => void): () => void {
  const set = (now: boolean) => {
    printing = now;
    // The browser draws the paper as soon as this returns.
    flushSync(changed);
  };
  const [before, after] = [() => set(true), () => set(false)];
  const onMedia = () => set(media.matches);
  window.addEventListener('beforeprint', before);
  window.addEventListener('afterprint', after);
  media.addEventListener('change', onMedia);
  return () => {
    window.removeEventListener('beforeprint', before);
    window.removeEventListener('afterprint', after);
    media.removeEventListener('change', onMedia);
  };
}

/** True while the page is drawn on paper, where every row of a long list is wanted. */
export const usePrinting = (): boolean => useSyncExternalStore(listen, () => printing);
