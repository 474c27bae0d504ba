import type { Yard } from '../../shared/model/yard.ts';

export const aYard = (changes: Partial<Yard> = {}): Yard => ({ id: 'yard-1', name: 'Orchard', note: null, ...changes });
