import type { IsoDay } from '../kernel/day.ts';
import { Queen } from '../model/queen.ts';

export const SaveQueen = Queen;

export interface QueenLine {
  readonly queen: Queen;
  readonly yearColour: 'white' | 'yellow' | 'red' | 'green' | 'blue';
  readonly batch: string | null;
  readonly breeder: string | null;
  readonly box: string | null;
  readonly hive: string | null;
  readonly bornOn: IsoDay | null;
}

export type QueensRefusal =
  | { readonly kind: 'queen-number-taken'; readonly field: 'number' | 'queen'; readonly number: string }
  | {
      readonly kind: 'queen-dates-turned-round';
      readonly field: 'provedOn';
      readonly firstEggsOn: IsoDay;
      readonly provedOn: IsoDay;
    };
