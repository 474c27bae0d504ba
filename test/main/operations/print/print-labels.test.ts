import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { expect, test } from 'vitest';
import { printLabels } from '../../../../main/operations/print/print-labels.ts';
import type { LabelChoice } from '../../../../shared/contract/print.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, aDeskWithBoxes, refusalOf } from '../../../builders/running-batch.ts';

const choice = (changes: Partial<LabelChoice> = {}): LabelChoice => ({
  batchId: 'batch-1',
  boxIds: null,
  sheet: 'a4-3x7-63.5x38.1',
  startAt: 1,
  qr: false,
  pencilLine: true,
  outline: false,
  ...changes,
});

test('draws the chosen boxes, remembers where the sheet goes on, and what was printed', async () => {
  const desk = aDeskWithBoxes();
  const file = mustOk(await printLabels(desk, choice({ boxIds: ['box-2', 'box-4'], startAt: 20 })));
  expect(file).toMatchObject({
    name: 'ripecell-labels-26-01.pdf',
    mediaType: 'application/pdf',
    pages: 1,
    nextStartAt: 1,
  });
  const pdf = await getDocument({ data: new Uint8Array(Buffer.from(file.base64, 'base64')), verbosity: 0 }).promise;
  const { items } = await (await pdf.getPage(1)).getTextContent();
  const words = items.flatMap((item) => ('str' in item ? [item.str] : []));
  expect(words.filter((word) => /^K\d\d$/.test(word))).toEqual(['K02', 'K04']);
  expect(desk.workbook.tables.labelPrints.all().map(({ placementId, printedOn }) => [placementId, printedOn])).toEqual([
    ['placement-2', '2026-05-14'],
    ['placement-4', '2026-05-14'],
  ]);
});

test.each([
  ['a batch without boxes', { batchId: null }, { kind: 'no-labels', field: 'batchId' }],
  ['a label the sheet does not have', { startAt: 22 }, { kind: 'start-beyond-sheet', field: 'startAt', labels: 21 }],
] as const)('refuses %s and writes nothing', async (_what, changes, refusal) => {
  const desk = aDeskWithBoxes();
  expect(refusalOf(await printLabels(desk, choice(changes)))).toEqual(refusal);
  expect(desk.workbook.tables.labelPrints.all()).toEqual([]);
});

test('refuses a batch whose cells are still in the builder', async () => {
  expect(refusalOf(await printLabels(aDeskWithBatch(), choice()))).toEqual({ kind: 'no-labels', field: 'batchId' });
});
