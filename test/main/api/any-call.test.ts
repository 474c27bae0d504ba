// Anything may be asked at the one door into the core: it answers, and no answer tells a stack, a path of ours or SQLite's
// own words. Which paths there are comes from the router itself.
import fc from 'fast-check';
import { expect, onTestFinished, test } from 'vitest';
import { createCore } from '../../../main/api/core.ts';
import { appRouter } from '../../../main/api/router.ts';
import { reckonHere } from '../../../main/engine/yield/reckon.ts';
import { countedIds } from '../../builders/desk.ts';
import { aClock, aComputer } from '../../builders/lifecycle.ts';

const PATHS = Object.keys(appRouter._def.procedures);
const TELLS = /\bat .+:\d+:\d+|node_modules|SQLITE_|\.ts\b|main\/(api|operations|workbook)/;

/** Another workbook would be open after these. */
const LEFT_OUT = /^workbook\.(close|open|begin|leave)/;

test('no answer to anything tells what only the makers should see', async () => {
  const core = createCore({ clock: aClock(), ids: countedIds(), reckon: reckonHere(), places: aComputer() });
  onTestFinished(() => core.close());
  await core.call({ kind: 'mutation', path: 'workbook.beginWorkbook', input: { name: 'Queens', folder: null } });
  const asked = PATHS.filter((path) => !LEFT_OUT.test(path));
  expect(asked.length).toBeGreaterThan(100);
  const call = fc.record({
    kind: fc.constantFrom('query', 'mutation'),
    path: fc.oneof({ weight: 9, arbitrary: fc.constantFrom(...asked) }, { weight: 1, arbitrary: fc.string() }),
    input: fc.oneof(
      fc.jsonValue(),
      fc.dictionary(fc.constantFrom('id', 'batchId', 'code', 'day', 'text'), fc.jsonValue()),
    ),
  });
  await fc.assert(
    fc.asyncProperty(call, async (one) => {
      const reply = JSON.stringify(await core.call(one));
      expect(reply).not.toMatch(TELLS);
    }),
    { numRuns: 2_000 },
  );
}, 60_000);
