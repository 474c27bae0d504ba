// A thread of its own for the questions that take a while, so that saving and the window never wait for them.
import { parentPort } from 'node:worker_threads';
import { startReckoning, type YieldKind, type YieldQuestions } from '../../main/engine/yield/reckon.ts';

export interface AskedQuestion<Kind extends YieldKind = YieldKind> {
  readonly kind: Kind;
  readonly ask: YieldQuestions[Kind]['ask'];
}

export type GivenAnswer = { readonly answer: unknown } | { readonly trouble: string };

const reckon = startReckoning();

parentPort?.on('message', ({ kind, ask }: AskedQuestion) => {
  let given: GivenAnswer;
  try {
    given = { answer: reckon(kind, ask) };
  } catch (error) {
    given = { trouble: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
  parentPort?.postMessage(given);
});
