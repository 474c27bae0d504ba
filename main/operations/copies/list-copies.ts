import type { CopyList } from '../../../shared/contract/copies.ts';
import type { CopyDesk } from './copy-desk.ts';

/** Safety copies of the open workbook, or of the one that could not be opened; where they lie and what is decided. */
export const listCopies = ({ keeper }: CopyDesk): CopyList => keeper.copies.list();
