import { renameSync, rmSync, writeFileSync } from 'node:fs';
import { type BrowserWindow, dialog, shell } from 'electron';
import { z } from 'zod';
import type { NextCommand, PickedFile, SavedFile } from '../../shared/contract/shell.ts';
import type { CommandLine } from './command-line.ts';

const PickInput = z.strictObject({ title: z.string().max(200) });
/** 64 MB of base64: far above any paper of the workbook, below what could stop the window. */
const SaveInput = z.strictObject({ name: z.string().min(1).max(200), base64: z.base64().max(64_000_000) });
const ShowInput = z.strictObject({ path: z.string().min(1).max(4096) });

type Answer = (window: BrowserWindow, input: unknown) => Promise<unknown>;

/** The calls that the window's shell answers itself, before the core is asked. */
export function shellCalls(commands: CommandLine): ReadonlyMap<string, Answer> {
  return new Map<string, Answer>([
    ['shell.pickFile', pickFile],
    ['shell.pickFolder', pickFolder],
    ['shell.saveFile', saveFile],
    ['shell.showInFolder', showInFolder],
    ['shell.nextCommand', async (): Promise<NextCommand> => ({ available: true, command: await commands.next() })],
  ]);
}

async function pickFile(window: BrowserWindow, input: unknown): Promise<PickedFile> {
  const { title } = PickInput.parse(input);
  const filters = [{ name: 'Ripecell', extensions: ['ripecell', 'zip'] }];
  const { filePaths } = await dialog.showOpenDialog(window, { title, properties: ['openFile'], filters });
  return { available: true, path: filePaths[0] ?? null };
}

async function pickFolder(window: BrowserWindow, input: unknown): Promise<PickedFile> {
  const { title } = PickInput.parse(input);
  const { filePaths } = await dialog.showOpenDialog(window, {
    title,
    properties: ['openDirectory', 'createDirectory'],
  });
  return { available: true, path: filePaths[0] ?? null };
}

async function saveFile(window: BrowserWindow, input: unknown): Promise<SavedFile> {
  const { name, base64 } = SaveInput.parse(input);
  const { filePath } = await dialog.showSaveDialog(window, { defaultPath: name });
  if (!filePath) return { available: true, path: null, failed: false };
  const part = `${filePath}.part`;
  try {
    writeFileSync(part, Buffer.from(base64, 'base64'));
    renameSync(part, filePath);
    return { available: true, path: filePath, failed: false };
  } catch {
    rmSync(part, { force: true });
    return { available: true, path: filePath, failed: true };
  }
}

async function showInFolder(_window: BrowserWindow, input: unknown): Promise<{ readonly available: true }> {
  shell.showItemInFolder(ShowInput.parse(input).path);
  return { available: true };
}
