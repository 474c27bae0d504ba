import type { Bridge, CallReply, CallRequest } from '../../shared/contract/call.ts';

declare global {
  interface Window {
    readonly ripecell?: Bridge;
  }
}

const NOT_REACHED: CallReply = {
  ok: false,
  error: { message: 'workbook not reached', code: -32000, data: { code: 'CLIENT_CLOSED_REQUEST' } },
};

/** Above so many signs a call carries a file, for which the shell has an entrance of its own. */
const LONGEST_FORM = 250_000;

async function callByHttp(request: CallRequest): Promise<CallReply> {
  const body = JSON.stringify(request);
  const reply = await fetch(body.length > LONGEST_FORM ? '/call-with-file' : '/call', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body,
  });
  return reply.ok ? reply.json() : NOT_REACHED;
}

/** The one way out of the page: the window's preload, or the small server that served this page. */
export const bridge: Bridge = window.ripecell ?? { shell: 'loopback', call: callByHttp };
