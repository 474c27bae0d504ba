import type { MadeFile } from '../../shared/contract/files.ts';
import { shell } from './client.ts';

/** What is said after saving. */
export interface SavedWords {
  saved(path: string): string;
  readonly notSaved: string;
  readonly downloaded: string;
}

function blobUrl({ base64, mediaType }: MadeFile): string {
  const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  return URL.createObjectURL(new Blob([bytes], { type: mediaType }));
}

function download(file: MadeFile): void {
  const link = document.createElement('a');
  link.href = blobUrl(file);
  link.download = file.name;
  link.click();
}

/** In a browser the paper opens beside the page, from where the system's own print window is called. */
export async function openPdf(file: MadeFile): Promise<null> {
  window.open(blobUrl(file), '_blank');
  return null;
}

/** Where a file went: to a path, into the browser's downloads, or nowhere, by choice or by a failing drive. */
export type WentOut = { readonly path: string } | 'downloaded' | 'left' | 'failed';

/** Through the window's own dialog, or into the browser's downloads. */
export async function letOut(file: MadeFile): Promise<WentOut> {
  const saved = await shell.saveFile(file.name, file.base64);
  if (!saved.available) {
    download(file);
    return 'downloaded';
  }
  if (saved.failed) return 'failed';
  return saved.path ? { path: saved.path } : 'left';
}

/** What to say of it, or nothing. */
export function saidOf(went: WentOut, words: SavedWords): string | null {
  if (went === 'left') return null;
  if (went === 'failed') return words.notSaved;
  return went === 'downloaded' ? words.downloaded : words.saved(went.path);
}

export const saveMade = async (file: MadeFile, words: SavedWords): Promise<string | null> =>
  saidOf(await letOut(file), words);
