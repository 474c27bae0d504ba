import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Desk } from '../../../../main/operations/operation.ts';
import { countTally } from '../../../../main/operations/tally-keeping.ts';
import { Draw } from '../../../builders/draw.ts';
import { ACTS, layGround, randomAct } from '../../../builders/random-act.ts';
import { aWatchedDesk, dataDigest } from '../../../builders/watched-workbook.ts';

/** Kept tallies, and the same counted anew: one for each batch, none for one that is gone. */
const tallies = ({ workbook: { tables } }: Desk) => ({
  kept: tables.tallies.all().toSorted((a, b) => (a.batchId < b.batchId ? -1 : 1)),
  counted: tables.batches
    .all()
    .map(({ id }) => countTally(tables, id))
    .toSorted((a, b) => (a.batchId < b.batchId ? -1 : 1)),
});

test('a walk of operations, undos and redos always stands where a stack of digests says, with its tallies right', () => {
  const made = new Set<string>();
  fc.assert(
    fc.property(fc.nat(), (seed) => {
      const { desk, db } = aWatchedDesk();
      layGround(desk);
      const draw = new Draw(seed);
      const past: string[] = [];
      const future: string[] = [];
      let now = dataDigest(db);
      for (let turn = 0; turn < 60; turn += 1) {
        const way = draw.next();
        if (way < 0.2) {
          expect(desk.workbook.undo().ok).toBe(past.length > 0);
          if (past.length > 0) future.push(now);
          now = past.pop() ?? now;
        } else if (way < 0.3) {
          expect(desk.workbook.redo().ok).toBe(future.length > 0);
          if (future.length > 0) past.push(now);
          now = future.pop() ?? now;
        } else {
          const { what, ok } = randomAct(desk, draw);
          const after = dataDigest(db);
          if (after !== now) {
            expect(ok).toBe(true);
            made.add(what);
            past.push(now);
            future.length = 0;
            now = after;
          }
        }
        expect(dataDigest(db)).toBe(now);
        const { kept, counted } = tallies(desk);
        expect(kept).toEqual(counted);
      }
      desk.workbook.close();
    }),
    { numRuns: 30, seed: 20_260_501 },
  );
  // The walk is worth something only while it really does all these things.
  expect(Object.keys(ACTS).filter((what) => !made.has(what))).toEqual([]);
});

test('a whole walk taken back leaves an empty workbook, and done again the full one', () => {
  fc.assert(
    fc.property(fc.nat(), fc.integer({ min: 1, max: 40 }), (seed, length) => {
      const { desk, db } = aWatchedDesk();
      const empty = dataDigest(db);
      const draw = new Draw(seed);
      for (let turn = 0; turn < length; turn += 1) randomAct(desk, draw);
      const full = dataDigest(db);
      while (desk.workbook.undo().ok);
      expect(dataDigest(db)).toBe(empty);
      while (desk.workbook.redo().ok);
      expect(dataDigest(db)).toBe(full);
      desk.workbook.close();
    }),
    { numRuns: 20, seed: 20_260_501 },
  );
});
