// Counts that cannot be, sent through the door as the window sends them: a sentence that names the field and the remedy,
// nothing written, and every other figure of the season reckoned as before.
import { expect, onTestFinished, test } from 'vitest';
import { z } from 'zod';
import { type Core, createCore } from '../../../main/api/core.ts';
import { reckonHere } from '../../../main/engine/yield/reckon.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { english } from '../../../shared/text/english/english.ts';
import { refusalSentence } from '../../../shared/text/sentences.ts';
import { countedIds } from '../../builders/desk.ts';
import { aClock, aComputer } from '../../builders/lifecycle.ts';
import { aStart } from '../../builders/running-batch.ts';

const COUNTED = { given: 12, taken: 9, removed: null, sealed: 8 };
const ASKED = { factor: 'method', and: null, season: null, leaveOutPractice: false };
const Comparison = z.object({ rows: z.array(z.object({ rates: z.record(z.string(), z.unknown()) })) });
const GotBatch = z.object({ bars: z.array(z.object({ barId: z.string() })) });

test.each([
  {
    what: 'more taken than given',
    counts: { given: 12, taken: 15 },
    sentence: 'Taken: 15 cells taken is more than the 12 given. Correct one of the two.',
  },
  {
    what: 'more sealed than taken',
    counts: { sealed: 10 },
    sentence: 'Sealed: 10 cells sealed is more than the 9 that were taken and left in. Correct one of the two.',
  },
  {
    what: 'more sealed than given, the stage between not counted',
    counts: { taken: null, sealed: 13 },
    sentence: 'Sealed: 13 cells sealed is more than the 12 given. Correct one of the two.',
  },
  {
    what: 'a count typed as text',
    counts: { taken: 'nine' },
    sentence: 'Taken: Type a whole number.',
  },
])('$what: the sentence, and the rest is reckoned as before', async ({ counts, sentence }) => {
  const core = await aCoreWithCounts();
  const before = await compared(core);
  expect(before.rows[0]?.rates).toMatchObject({ take: { successes: 9, of: 12 }, sealing: { successes: 8, of: 9 } });
  const reply = await tell(core, 'batches.recordBarCounts', { ...(await rowOf(core)), ...COUNTED, ...counts });
  expect(sentenceOf(reply)).toBe(sentence);
  expect(await compared(core)).toEqual(before);
  // The row typed right is taken, and counts.
  await tell(core, 'batches.recordBarCounts', { ...(await rowOf(core)), ...COUNTED, taken: 10 });
  expect((await compared(core)).rows[0]?.rates).toMatchObject({ take: { successes: 10, of: 12 } });
});

test('a season without batches is an answer without rows, for every factor, and the next question is answered', async () => {
  const core = await aCoreWithCounts();
  for (const factor of ['method', 'builder', 'breeder', 'season', 'month', 'boxType'])
    expect(await compared(core, { factor, season: 1999 })).toMatchObject({ rows: [] });
  expect(await ask(core, 'season.compareStage', { ...STAGE, season: 1999 })).toMatchObject({
    data: { groups: [], lead: null },
  });
  expect((await compared(core)).rows).toHaveLength(1);
});

const STAGE = { ...ASKED, allowingFor: null, ahead: 1, stage: 'take' };

const ask = (core: Core, path: string, input?: unknown) => core.call({ kind: 'query', path, input });
const tell = (core: Core, path: string, input?: unknown) => core.call({ kind: 'mutation', path, input });

async function aCoreWithCounts(): Promise<Core> {
  const core = createCore({ clock: aClock(), ids: countedIds(), reckon: reckonHere(), places: aComputer() });
  onTestFinished(() => core.close());
  await tell(core, 'workbook.beginWorkbook', { name: 'Queens', folder: null });
  await tell(core, 'batches.startBatch', aStart());
  expect(await tell(core, 'batches.recordBarCounts', { ...(await rowOf(core)), ...COUNTED })).toMatchObject({
    data: { ok: true },
  });
  return core;
}

async function rowOf(core: Core) {
  const reply = await ask(core, 'batches.getBatch', { batchId: 'batch-1' });
  const barId = GotBatch.parse(reply.ok ? reply.data : null).bars[0]?.barId;
  return { batchId: 'batch-1', barId, countedOn: '2026-05-14' };
}

async function compared(core: Core, changes: object = {}) {
  const reply = await ask(core, 'season.compareSeason', { ...ASKED, ...changes });
  return Comparison.parse(reply.ok ? reply.data : null);
}

function sentenceOf(reply: Awaited<ReturnType<typeof tell>>): string {
  const { refusal } = z.object({ refusal: z.custom<Refusal>() }).parse(reply.ok ? reply.data : null);
  return refusalSentence(english, refusal, String);
}
