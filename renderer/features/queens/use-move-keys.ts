import { useEffect } from 'react';
import { type MovePlace, placeOfKey } from './move-keys.ts';

/** Single keys act while nobody is typing into a field. */
export function useMoveKeys(choose: (place: MovePlace) => void): void {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      const { target } = event;
      if (target instanceof HTMLElement && target.closest('input, textarea, select, [role="dialog"]')) return;
      const place = placeOfKey(event);
      if (place === null) return;
      event.preventDefault();
      choose(place);
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, [choose]);
}
