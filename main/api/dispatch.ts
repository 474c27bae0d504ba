import { callTRPCProcedure, getErrorShape, getTRPCErrorFromUnknown } from '@trpc/server';
import { z } from 'zod';
import type { CallReply } from '../../shared/contract/call.ts';
import type { Lifecycle } from '../operations/workbook/lifecycle.ts';
import { refusalIn } from './refused.ts';
import { appRouter } from './router.ts';

const CallEnvelope = z.strictObject({
  kind: z.enum(['query', 'mutation']),
  path: z.string().min(1).max(120),
  input: z.unknown().optional(),
});

const MALFORMED_CALL: CallReply = {
  ok: false,
  error: { message: 'malformed call', code: -32600, data: { code: 'BAD_REQUEST' } },
};

/**
 * The one door into the core: both shells call this and nothing else. A change that is declined, also because its input
 * does not fit or no workbook is open, comes back as data: `{ ok: false, refusal }`. A plain question in the same trouble
 * has no Result to put it in; its error carries the refusal under `data.refusal`. No stack ever leaves.
 */
export async function dispatch(
  lifecycle: Lifecycle,
  raw: unknown,
  report: (error: unknown) => void,
): Promise<CallReply> {
  const envelope = CallEnvelope.safeParse(raw);
  if (!envelope.success) return MALFORMED_CALL;
  const { kind, path, input } = envelope.data;
  try {
    const data: unknown = await callTRPCProcedure({
      router: appRouter,
      path,
      type: kind,
      ctx: lifecycle,
      getRawInput: () => Promise.resolve(input),
      signal: undefined,
      batchIndex: 0,
    });
    return { ok: true, data: data ?? null };
  } catch (thrown) {
    const error = getTRPCErrorFromUnknown(thrown);
    if (error.code === 'INTERNAL_SERVER_ERROR') report(error.cause ?? error);
    return errorReply(error, { kind, path, input, lifecycle });
  }
}

interface FailedCall {
  readonly kind: 'query' | 'mutation';
  readonly path: string;
  readonly input: unknown;
  readonly lifecycle: Lifecycle;
}

function errorReply(
  error: ReturnType<typeof getTRPCErrorFromUnknown>,
  { kind, path, input, lifecycle }: FailedCall,
): CallReply {
  const refusal = refusalIn(error);
  const shape = getErrorShape({ config: appRouter._def._config, error, type: kind, path, input, ctx: lifecycle });
  const { code, httpStatus } = shape.data;
  // An unexpected error may quote rows or places of files in its message; the shell is told it, the page is not.
  const message = error.code === 'INTERNAL_SERVER_ERROR' ? 'unexpected error' : shape.message;
  return {
    ok: false,
    error: { message, code: shape.code, data: { code, httpStatus, path, ...(refusal && { refusal }) } },
  };
}
