import type { z } from 'zod';
import type { ErrandPreview, PreviewErrand } from '../../../shared/contract/errand.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { compareCodes } from '../../../shared/kernel/box-codes.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';
import { readErrand } from './errand-looks.ts';

/** What an errand that came back would bring, look by look; nothing is written. */
export function previewErrand(desk: Desk, { file }: z.infer<typeof PreviewErrand>): Result<ErrandPreview, Refusal> {
  const read = readErrand(desk, file);
  if (!read.ok) return read;
  const shown = read.value.looks.map((one) => one.shown);
  const looks = shown
    .filter(({ standing }) => standing !== 'same')
    .toSorted((a, b) => compareCodes(a.box, b.box) || (a.on < b.on ? -1 : 1));
  return ok({ from: read.value.from, madeOn: read.value.madeOn, looks, same: shown.length - looks.length });
}
