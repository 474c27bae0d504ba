import { Worker } from 'node:worker_threads';
import type { Reckoner } from '../../main/engine/yield/reckon.ts';
import type { GivenAnswer } from './reckoning-worker.ts';

export interface ReckoningThread {
  readonly reckon: Reckoner;
  stop(): Promise<void>;
}

/** Answers kept at a time, by their question. */
const KEPT = 200;

interface Waiting {
  readonly resolve: (answer: unknown) => void;
  readonly reject: (error: Error) => void;
}

/**
 * A reckoner in a thread, begun at the first question and begun anew when it broke. An answer is kept by its question,
 * that is by the counts themselves, so it can never be out of date.
 * @param file the built reckoning-worker.
 */
export function startReckoningThread(file: string): ReckoningThread {
  const waiting = new Map<number, Waiting>();
  let worker: Worker | null = null;
  let asked = 0;

  const giveUp = (error: Error) => {
    worker = null;
    for (const { reject } of waiting.values()) reject(error);
    waiting.clear();
  };
  const begin = (): Worker => {
    const begun = new Worker(file);
    begun.unref();
    begun.on('message', (given: GivenAnswer) => {
      const asker = waiting.get(given.number);
      waiting.delete(given.number);
      if ('answer' in given) asker?.resolve(given.answer);
      else asker?.reject(new Error(given.trouble));
    });
    begun.on('error', giveUp);
    begun.on('exit', () => {
      if (worker === begun) giveUp(new Error('the thread that reckons ended'));
    });
    return begun;
  };
  const send = (kind: string, ask: unknown) =>
    new Promise<unknown>((resolve, reject) => {
      asked += 1;
      waiting.set(asked, { resolve, reject });
      worker ??= begin();
      worker.postMessage({ number: asked, kind, ask });
    });

  return {
    reckon: keepAnswers(send) as Reckoner,
    async stop() {
      const running = worker;
      giveUp(new Error('the thread that reckons ended'));
      await running?.terminate();
    },
  };
}

type Send = (kind: string, ask: unknown) => Promise<unknown>;

/** Asks once for each question. An answer that failed is not kept; the oldest goes first. */
function keepAnswers(send: Send): Send {
  const kept = new Map<string, Promise<unknown>>();
  return (kind, ask) => {
    const key = JSON.stringify([kind, ask]);
    const answer = kept.get(key) ?? send(kind, ask);
    kept.delete(key);
    kept.set(key, answer);
    answer.catch(() => kept.delete(key));
    const oldest = kept.size > KEPT ? kept.keys().next().value : undefined;
    if (oldest !== undefined) kept.delete(oldest);
    return answer;
  };
}
