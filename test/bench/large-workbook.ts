import { statSync } from 'node:fs';
import type { Tables, Workbook } from '../../main/workbook/workbook.ts';
import { ok } from '../../shared/kernel/result.ts';
import { aBar, aBatch } from '../builders/batch.ts';
import { aCountedWorkbook, mustOk } from './counted-workbook.ts';

const SEASONS = { first: 2007, number: 20, batches: 60, bars: 4 };
const STAGES = ['given', 'taken', 'sealed'] as const;
const SUMS = {
  ...{ given: 40, taken: 30, enteredSealing: 30, sealed: 28, placed: 28 },
  ...{ emergenceKnown: 28, emerged: 25, matingKnown: 25, proved: 19, laying: 20 },
};

/** Twenty seasons of sixty batches, and so many corrections of their counts that the journal fills the file; closed. */
export function aLargeWorkbook(folder: string, bytes = 0): string {
  const workbook = aCountedWorkbook(folder);
  for (let season = 0; season < SEASONS.number; season += 1)
    inOneStep(workbook, (tables) => addSeason(tables, SEASONS.first + season));
  for (let round = 1; statSync(workbook.file).size < bytes; round += 1)
    inOneStep(workbook, ({ counts }) => {
      for (let season = 0; season < SEASONS.number; season += 1)
        for (const row of countsOf(`${SEASONS.first + season}-1`, round)) counts.update(row);
    });
  workbook.close();
  return workbook.file;
}

function addSeason({ batches, bars, counts, tallies }: Tables, season: number): void {
  for (let number = 1; number <= SEASONS.batches; number += 1) {
    const id = `${season}-${number}`;
    batches.insert(aBatch({ id, code: id, season }));
    const taken = 28 + ((7 * season + number) % 11);
    tallies.put({ ...SUMS, batchId: id, taken, enteredSealing: taken });
    for (let bar = 1; bar <= SEASONS.bars; bar += 1)
      bars.insert(aBar({ id: `${id}-${bar}`, batchId: id, number: bar }));
    for (const row of countsOf(id, 0)) counts.insert(row);
  }
}

const countsOf = (batchId: string, round: number) =>
  Array.from({ length: SEASONS.bars }, (_, bar) =>
    STAGES.map((stage) => ({
      ...{ id: `${batchId}-${bar + 1}-${stage}`, batchId, barId: `${batchId}-${bar + 1}` },
      ...{ stage, cells: 10 + (round % 9), countedOn: '2026-05-09' },
    })),
  ).flat();

function inOneStep(workbook: Workbook, work: (tables: Tables) => void): void {
  mustOk(
    workbook.change({ did: 'other' }, (tables) => {
      work(tables);
      return ok(null);
    }),
  );
}
