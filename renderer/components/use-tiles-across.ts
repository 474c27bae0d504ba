import { type RefObject, useLayoutEffect, useState } from 'react';

/** Width of a tile and of the gap to the next, in pixels (page.css, the board of boxes). */
const TILE = 112;
const GAP = 10;

/** How many tiles stand side by side in an element; it follows its width. */
export function useTilesAcross(place: RefObject<HTMLElement | null>): number {
  const [across, setAcross] = useState(1);
  useLayoutEffect(() => {
    const element = place.current;
    if (!element) return;
    const measure = () => setAcross(Math.max(1, Math.floor((element.clientWidth + GAP) / (TILE + GAP))));
    const watcher = new ResizeObserver(measure);
    measure();
    watcher.observe(element);
    return () => watcher.disconnect();
  }, [place]);
  return across;
}
