import { z } from 'zod';

/** What is typed and not saved yet, by the place on the page it is typed in; the text is the page's own JSON. */
export type Drafts = Readonly<Record<string, string>>;

export const KeepDraft = z.object({
  key: z.string().min(1).max(200),
  /** null = saved or taken back: nothing is kept any more. */
  text: z.string().max(20_000).nullable(),
});
