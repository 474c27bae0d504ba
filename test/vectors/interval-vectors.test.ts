// 57 intervals reckoned with R 4.2.2, some printed in Newcombe 1998 (Stat. Med. 17:857); the source stands beside each.
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { runVectorFiles } from './run-vectors.ts';

test('every interval vector passes', async () => {
  expect(await runVectorFiles([fileURLToPath(new URL('./interval-vectors.json', import.meta.url))])).toBe(0);
});
