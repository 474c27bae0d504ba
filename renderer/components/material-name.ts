import type { Words } from '../../shared/text/english/english.ts';

export const materialName = (materials: Words['materials'], material: string): string =>
  materials[material as keyof Words['materials']]?.name ?? material;
