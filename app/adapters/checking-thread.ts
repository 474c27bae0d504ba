import { Worker } from 'node:worker_threads';
import type { CheckFile, Soundness } from '../../main/workbook/workbook.ts';

/**
 * A thorough look in a thread of its own, which begins with the question and ends with the answer.
 * @param worker the built checking-worker.
 */
export const checkInThread =
  (worker: string): CheckFile =>
  (file, expectedDigest) =>
    new Promise((resolve, reject) => {
      const thread = new Worker(worker, { workerData: { file, expectedDigest } });
      thread.unref();
      thread.on('message', (found: Soundness) => resolve(found));
      thread.on('error', reject);
      // After the answer this says nothing any more.
      thread.on('exit', () => reject(new Error('the thread that checks ended without an answer')));
    });
