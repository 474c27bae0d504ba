import type { QUEEN_PLACES as english } from '../english/queen-places.ts';
import type { Translation } from '../translation.ts';

export const QUEEN_PLACES: Translation<typeof english> = {
  'in-box': 'in ihrem Kästchen',
  caged: 'im Käfig',
  'in-hive': 'in einem Volk',
  given: 'weggegeben',
  sold: 'verkauft',
  dead: 'tot',
  lost: 'verloren',
  unknown: 'an unbekanntem Ort',
};
