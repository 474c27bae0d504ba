import type { SafetyCopy } from '../../../shared/contract/copies.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { Result } from '../../../shared/kernel/result.ts';
import type { CopyDesk } from './copy-desk.ts';

/** One more safety copy, now; it stays until the person removes it. */
export const makeCopy = ({ keeper }: CopyDesk): Result<SafetyCopy, Refusal> => keeper.copies.make('by-hand');
