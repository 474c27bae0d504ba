import { lazy, Suspense, useState } from 'react';
import { useSaveTrouble } from '../client/hooks.ts';

const TroubleStrip = lazy(() => import('./TroubleStrip.tsx').then((m) => ({ default: m.TroubleStrip })));

/** While the file cannot be written: why, and another place. The page below keeps what is typed. */
export function SaveTrouble() {
  const trouble = useSaveTrouble();
  const [savedAs, setSavedAs] = useState<string | null>(null);
  if (trouble === null && savedAs === null) return null;
  return (
    <Suspense fallback={null}>
      <TroubleStrip trouble={trouble} savedAs={savedAs} onSaved={setSavedAs} />
    </Suspense>
  );
}
