import type { PLACEMENT_ENDS as english } from '../english/placement-ends.ts';
import type { Translation } from '../translation.ts';

export const PLACEMENT_ENDS: Translation<typeof english> = {
  caught: 'Königin gefangen',
  failed: 'gescheitert',
  united: 'vereinigt',
  'shaken-out': 'abgeschüttelt',
  'cell-taken-back': 'Zelle zurückgenommen',
  other: 'anderes',
};
