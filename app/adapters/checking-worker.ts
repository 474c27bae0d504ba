// Looks at one copy of the workbook's pages and says what it found, so that saving and the window never wait for it.
import { parentPort, workerData } from 'node:worker_threads';
import { soundnessOfFile } from '../../main/workbook/safety-copy.ts';

const { file, expectedDigest } = workerData as { readonly file: string; readonly expectedDigest: string | null };
parentPort?.postMessage(soundnessOfFile(file, expectedDigest));
