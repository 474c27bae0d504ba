import type { Material } from '../../biology/materials.ts';

/** Amounts for a round of about 20 cells. Common practice, no source. */
export const MATERIAL_WORDS = {
  'sugar syrup': { name: 'sugar syrup', line: 'half a litre to a litre a day, one part sugar to one part water' },
  pollen: { name: 'pollen', line: 'one full comb, or 100 to 250 g of patty every four to five days' },
  'starter-strip frame': { name: 'frame with starter strips', line: 'two to four pointed strips of foundation' },
  'empty worker comb': { name: 'empty worker comb', line: 'dark for grafting, light for cutting' },
  'laying cage': { name: 'laying box', line: 'with its plugs' },
  'queen cage': { name: 'queen cage', line: 'one' },
  'transfer tool': { name: 'transfer tool', line: 'and good light' },
  'cups and bar': { name: 'cups and bar', line: 'a quarter more cups than cells wanted' },
  'sharp knife': { name: 'sharp knife', line: 'and hot water' },
  beeswax: { name: 'beeswax', line: 'melted over water' },
  'damp cloth': { name: 'damp cloth', line: 'to cover the bar' },
  'cell punch': { name: 'cell punch', line: 'slightly warm' },
  'spacer frame': { name: 'spacer frame', line: 'three to four centimetres high' },
  'starter box': { name: 'ventilated starter box', line: 'five combs wide' },
  'queen excluder': { name: 'queen excluder', line: 'without gaps' },
  'divider board': { name: 'divider board with slide', line: 'one' },
  'screened floor': { name: 'screened board with a door', line: 'one' },
  'cell cages': { name: 'cell cages', line: 'one per cell' },
  'mating boxes': { name: 'mating boxes', line: 'one per cell' },
  fondant: { name: 'fondant', line: '250 to 500 g for each mini box' },
  'water spray': { name: 'water spray', line: 'one' },
  labels: { name: 'labels', line: 'one per box and a few more' },
  'marking pen': { name: 'marking pen', line: 'in the colour of the year' },
} as const satisfies Record<Material, { readonly name: string; readonly line: string }>;
