import { BrowserWindow, type IpcMainInvokeEvent, ipcMain } from 'electron';
import { z } from 'zod';
import type { Core } from '../../main/api/core.ts';
import { CALL_CHANNEL, type CallReply } from '../../shared/contract/call.ts';
import type { CommandLine } from './command-line.ts';
import { shellCalls } from './shell-calls.ts';
import { isOwnPage } from './window.ts';

const ShellCall = z.object({ path: z.string().startsWith('shell.'), input: z.unknown().optional() });

const isChange = (request: unknown): boolean => z.object({ kind: z.literal('mutation') }).safeParse(request).success;

const NOT_FOR_YOU: CallReply = {
  ok: false,
  error: { message: 'not for this page', code: -32600, data: { code: 'FORBIDDEN' } },
};
const SHELL_FAILED: CallReply = {
  ok: false,
  error: { message: 'the window could not do that', code: -32603, data: { code: 'INTERNAL_SERVER_ERROR' } },
};

interface CallSetting {
  readonly core: Core;
  readonly commands: CommandLine;
  /** Told after each call that may have changed the workbook, or which one is open. */
  readonly onChange: () => void;
}

/** The one channel from the page. The caller is looked at before the message is. */
export function answerCalls({ core, commands, onChange }: CallSetting): void {
  const ofShell = shellCalls(commands);
  ipcMain.handle(CALL_CHANNEL, async (event, request: unknown): Promise<CallReply> => {
    const window = windowOf(event);
    if (!window) return NOT_FOR_YOU;
    const shellCall = ShellCall.safeParse(request);
    if (!shellCall.success) {
      const reply = await core.call(request);
      if (isChange(request)) onChange();
      return reply;
    }
    const answer = ofShell.get(shellCall.data.path);
    if (!answer) return { ok: true, data: { available: false } };
    try {
      return { ok: true, data: await answer(window, shellCall.data.input) };
    } catch {
      return SHELL_FAILED;
    }
  });
}

/** The program's own window, when the message comes from its main frame and its own page; null for anybody else. */
function windowOf(event: IpcMainInvokeEvent): BrowserWindow | null {
  const frame = event.senderFrame;
  if (!frame || frame.parent || !isOwnPage(frame.url)) return null;
  return BrowserWindow.fromWebContents(event.sender);
}
