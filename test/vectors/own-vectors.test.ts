// Check values reckoned with R 4.2.2, some printed in Newcombe 1998 (Stat. Med. 17:857); the source stands beside each.
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { runVectorFiles } from './run-vectors.ts';

test.each(['interval', 'forecast'])('every %s vector passes', async (name) => {
  expect(await runVectorFiles([fileURLToPath(new URL(`./${name}-vectors.json`, import.meta.url))])).toBe(0);
});
