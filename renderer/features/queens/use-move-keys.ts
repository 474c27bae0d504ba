import { useEffect } from 'react';
import { useLetterKeys } from '../../components/words.ts';
import { type MovePlace, placeOfKey } from './move-keys.ts';

/** Single keys act while nobody is typing into a field, unless they are switched off (WCAG 2.2, 2.1.4). */
export function useMoveKeys(choose: (place: MovePlace) => void): void {
  const letterKeys = useLetterKeys();
  useEffect(() => {
    if (!letterKeys) return;
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
  }, [choose, letterKeys]);
}
