import { createTRPCClient, TRPCClientError, type TRPCLink } from '@trpc/client';
import type { inferRouterOutputs } from '@trpc/server';
import { observable } from '@trpc/server/observable';
import type { AppRouter } from '../../main/api/router.ts';
import { type CallReply, RECKONED } from '../../shared/contract/call.ts';
import type { NextCommand, PickedFile, SavedFile } from '../../shared/contract/shell.ts';
import { bridge } from './bridge.ts';
import { atMost } from './lines.ts';
import { noteAnswer } from './save-trouble.ts';

type Failure = Extract<CallReply, { ok: false }>['error'];

const asError = (failure: Failure) => TRPCClientError.from({ error: failure } as never);

/**
 * A browser keeps six lines to one address. Questions that are reckoned may take seconds each and get two of them, so that
 * a save never waits for a line; and of those nobody waits for any more, none is asked.
 */
const reckoning = atMost(2);

const link: TRPCLink<AppRouter> =
  () =>
  ({ op }) =>
    observable((observer) => {
      const kind = op.type === 'query' ? 'query' : 'mutation';
      const call = () => bridge.call({ kind, path: op.path, input: op.input });
      (RECKONED.has(op.path) ? reckoning(call, op.signal) : call()).then(
        (reply) => {
          if (!reply.ok) return observer.error(asError(reply.error));
          if (kind === 'mutation' && !op.path.startsWith('drafts.')) noteAnswer(reply.data);
          observer.next({ result: { type: 'data', data: reply.data } });
          observer.complete();
        },
        (cause) => observer.error(TRPCClientError.from(cause instanceof Error ? cause : new Error(String(cause)))),
      );
    });

/** Every operation of the core by name: `ask.batches.listBatches.query()`. */
export const ask = createTRPCClient<AppRouter>({ links: [link] });

export type Answers = inferRouterOutputs<AppRouter>;

async function askShell<Answer>(path: string, input?: unknown): Promise<Answer | { readonly available: false }> {
  const reply = await bridge.call({ kind: 'mutation', path: `shell.${path}`, input });
  return reply.ok ? (reply.data as Answer) : { available: false };
}

/** What only the window can do; `available: false` in a browser. */
export const shell = {
  kind: bridge.shell,
  pickFile: (title: string): Promise<PickedFile> => askShell<PickedFile>('pickFile', { title }),
  pickFolder: (title: string): Promise<PickedFile> => askShell<PickedFile>('pickFolder', { title }),
  saveFile: (name: string, base64: string): Promise<SavedFile> => askShell<SavedFile>('saveFile', { name, base64 }),
  showInFolder: (path: string) => askShell<{ readonly available: true }>('showInFolder', { path }),
  nextCommand: (): Promise<NextCommand> => askShell<NextCommand>('nextCommand'),
};
