import { MATERIAL_WORDS } from '../../../shared/text/english/methods.ts';

export const materialName = (material: string): string =>
  MATERIAL_WORDS[material as keyof typeof MATERIAL_WORDS]?.name ?? material;
