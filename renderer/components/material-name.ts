import type { FirstWords } from '../../shared/text/english/first-words.ts';

export const materialName = (materials: FirstWords['materials'], material: string): string =>
  materials[material as keyof FirstWords['materials']]?.name ?? material;
