import type { z } from 'zod';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { Packed, PackWorkbook } from '../../../shared/contract/workbook.ts';
import type { Result } from '../../../shared/kernel/result.ts';
import type { Lifecycle } from './lifecycle.ts';

/** One file for another computer, where opening it is all that is left to do. */
export const packWorkbook = (
  { keeper }: Lifecycle,
  { folder }: z.infer<typeof PackWorkbook>,
): Result<Packed, Refusal> => keeper.pack(folder);
