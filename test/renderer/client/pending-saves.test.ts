import { expect, test } from 'vitest';
import { savesSettled, waitFor } from '../../../renderer/client/pending-saves.ts';

test('everything typed so far is waited for, a failed save as well', async () => {
  const told: string[] = [];
  const save = (name: string, ends: (resolve: () => void, reject: (error: Error) => void) => void) =>
    void waitFor(
      new Promise<void>((resolve, reject) => {
        setTimeout(() => {
          told.push(name);
          ends(resolve, reject);
        }, 5);
      }),
    );
  save('first', (_, reject) => reject(new Error('not reached')));
  save('second', (resolve) => resolve());
  expect(told).toEqual([]);
  await savesSettled();
  expect(told).toEqual(['first', 'second']);
});
