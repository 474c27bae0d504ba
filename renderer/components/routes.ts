import { useSyncExternalStore } from 'react';

/** The address inside the page: `#/batches/26-07?x=y`. Kept in the browser's history, so back and forward just work. */
export interface Route {
  readonly parts: readonly string[];
  readonly query: URLSearchParams;
}

export function readRoute(hash: string): Route {
  const [path = '', query = ''] = hash.replace(/^#\/?/, '').split('?');
  const parts = path
    .split('/')
    .filter((part) => part !== '')
    .map(decodeURIComponent);
  return { parts: parts.length === 0 ? ['today'] : parts, query: new URLSearchParams(query) };
}

const onTurn = (changed: () => void) => {
  window.addEventListener('hashchange', changed);
  return () => window.removeEventListener('hashchange', changed);
};

export function useRoute(): Route {
  const hash = useSyncExternalStore(onTurn, () => window.location.hash);
  return readRoute(hash);
}

export function goTo(address: string): void {
  window.location.hash = address;
}
