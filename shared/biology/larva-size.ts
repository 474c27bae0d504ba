/**
 * What a larva looks like at an age, hours since hatching. The shape is the better guide; millimetres are from memory
 * (Human et al. 2013, miscellaneous methods) and are shown as "about"; the words are common practice, no source.
 */
export const LARVA_SIZES = [
  { key: 'as-an-egg', hours: [0, 12], aboutMillimetres: [1.5, 1.8] },
  { key: 'gentle-comma', hours: [8, 18], aboutMillimetres: [1.7, 2.1] },
  { key: 'open-c', hours: [18, 30], aboutMillimetres: [2.2, 2.7] },
  { key: 'third-of-floor', hours: [30, 42], aboutMillimetres: [3, 3.5] },
  { key: 'half-of-floor', hours: [42, 60], aboutMillimetres: [4, 6] },
  { key: 'ring-fills-floor', hours: [60, 84], aboutMillimetres: [7, 9] },
  { key: 'fills-the-cell', hours: [84, 108], aboutMillimetres: [12, 14] },
] as const satisfies readonly {
  readonly key: string;
  readonly hours: readonly [number, number];
  readonly aboutMillimetres: readonly [number, number];
}[];
export type LarvaSize = (typeof LARVA_SIZES)[number]['key'];
