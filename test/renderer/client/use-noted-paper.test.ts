import { createElement } from 'react';
import { renderToString } from 'react-dom/server';
import { beforeEach, expect, test, vi } from 'vitest';
import { useNotedPaper } from '../../../renderer/client/use-noted-paper.ts';
import type { SavedFile } from '../../../shared/contract/shell.ts';

const notePaper = vi.hoisted(() => vi.fn(() => Promise.resolve({ ok: true, value: null })));
const saveFile = vi.hoisted(() => vi.fn<() => Promise<SavedFile>>());
vi.mock('../../../renderer/client/client.ts', () => ({
  ask: { print: { notePaper: { mutate: notePaper } } },
  shell: { kind: 'electron', saveFile },
}));
vi.mock('../../../renderer/client/hooks.ts', () => ({
  useAskAgain: () => () => {},
  useChange: <Made>(run: () => Promise<Made>) => ({ run, state: { state: 'idle' } }),
}));

const words = { saved: String, notSaved: 'not saved', downloaded: 'downloaded', pages: String };
const A_PAPER = { name: 'hive.pdf', mediaType: 'application/pdf', base64: '', pages: 1 };

beforeEach(() => {
  notePaper.mockClear();
  saveFile.mockClear();
});

/** Makes the paper and saves it, the dialog answering so. */
async function save(answer: SavedFile): Promise<void> {
  saveFile.mockResolvedValue(answer);
  let paper: { save(input: null): void } | null = null;
  renderToString(
    createElement(() => {
      paper = useNotedPaper(() => Promise.resolve(A_PAPER as never), words, { paper: 'hive-page', colonyId: 'h1' });
      return null;
    }),
  );
  (paper as { save(input: null): void } | null)?.save(null);
  await vi.waitFor(() => expect(saveFile).toHaveBeenCalledOnce());
  // Whatever would be noted is noted by then.
  await new Promise((done) => setImmediate(done));
}

test('a paper that was saved is noted as printed', async () => {
  await save({ available: true, failed: false, path: '/home/hive.pdf' });
  expect(notePaper).toHaveBeenCalledExactlyOnceWith({ paper: 'hive-page', colonyId: 'h1' });
});

test('so is one that went into the downloads of a browser', async () => {
  vi.stubGlobal('URL', { createObjectURL: () => 'blob:paper' });
  vi.stubGlobal('document', { createElement: () => ({ click() {} }) });
  await save({ available: false });
  expect(notePaper).toHaveBeenCalledOnce();
  vi.unstubAllGlobals();
});

test('one whose dialog was left, or that a drive did not take, is not', async () => {
  await save({ available: true, failed: false, path: null });
  saveFile.mockClear();
  await save({ available: true, failed: true, path: null });
  expect(notePaper).not.toHaveBeenCalled();
});
