import type { Drafts } from '../../../shared/contract/drafts.ts';
import type { DraftDesk } from './draft-desk.ts';

/** What was typed in the open workbook's pages and not saved. A workbook that cannot be written has none. */
export function listDrafts({ keeper }: DraftDesk): Drafts {
  const { current } = keeper;
  return current === null || current.readOnly ? {} : keeper.drafts.of(current.file);
}
