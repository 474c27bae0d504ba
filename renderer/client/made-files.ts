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

/** Through the window's own dialog, or into the browser's downloads; what to say afterwards, or nothing. */
export async function saveMade(file: MadeFile, words: SavedWords): Promise<string | null> {
  const saved = await shell.saveFile(file.name, file.base64);
  if (!saved.available) {
    download(file);
    return words.downloaded;
  }
  if (saved.failed) return words.notSaved;
  return saved.path ? words.saved(saved.path) : null;
}
