import { Worker } from 'node:worker_threads';
import type { Reckoner } from '../../main/engine/yield/reckon.ts';
import type { GivenAnswer } from './reckoning-worker.ts';

export interface ReckoningThread {
  readonly reckon: Reckoner;
  stop(): Promise<void>;
}

/** Answers kept at a time, by their question. */
const KEPT = 200;

interface Question {
  readonly kind: string;
  readonly ask: unknown;
  readonly resolve: (answer: unknown) => void;
  readonly reject: (error: Error) => void;
}

/**
 * A reckoner in a thread, begun at the first question and begun anew when it broke. One question is asked at a time, the
 * newest first: it is the one the person looks at. An answer is kept by its question, that is by the counts themselves,
 * so it can never be out of date.
 * @param file the built reckoning-worker.
 */
export function startReckoningThread(file: string): ReckoningThread {
  const questions: Question[] = [];
  let asked: Question | null = null;
  let worker: Worker | null = null;

  const settle = (end: (question: Question) => void) => {
    const question = asked;
    asked = null;
    if (question) end(question);
    askNext();
  };
  const broke = (error: Error) => {
    worker = null;
    settle(({ reject }) => reject(error));
  };
  const begin = (): Worker => {
    const begun = new Worker(file);
    begun.unref();
    begun.on('message', (given: GivenAnswer) => settle((question) => answer(question, given)));
    begun.on('error', broke);
    begun.on('exit', () => {
      if (worker === begun) broke(new Error('the thread that reckons ended'));
    });
    return begun;
  };
  const askNext = () => {
    if (asked) return;
    asked = questions.pop() ?? null;
    if (!asked) return;
    worker ??= begin();
    worker.postMessage({ kind: asked.kind, ask: asked.ask });
  };
  const send: Send = (kind, ask) =>
    new Promise((resolve, reject) => {
      questions.push({ kind, ask, resolve, reject });
      askNext();
    });

  return {
    reckon: keepAnswers(send) as Reckoner,
    /** Whoever still waits gets no answer: the page they were for is gone. */
    async stop() {
      const running = worker;
      worker = null;
      asked = null;
      questions.length = 0;
      await running?.terminate();
    },
  };
}

function answer({ resolve, reject }: Question, given: GivenAnswer): void {
  if ('answer' in given) resolve(given.answer);
  else reject(new Error(given.trouble));
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
