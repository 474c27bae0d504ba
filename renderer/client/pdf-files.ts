import type { PaperFile } from '../../shared/contract/print.ts';
import { shell } from './client.ts';

/** What is said after saving. */
export interface SavedWords {
  saved(path: string): string;
  readonly notSaved: string;
  readonly downloaded: string;
}

function blobUrl({ base64, mediaType }: PaperFile): string {
  const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  return URL.createObjectURL(new Blob([bytes], { type: mediaType }));
}

function downloadPdf(file: PaperFile): void {
  const link = document.createElement('a');
  link.href = blobUrl(file);
  link.download = file.name;
  link.click();
}

/** In a browser the PDF opens beside the page, from where the system's own print window is called. */
export async function openPdf(file: PaperFile): Promise<null> {
  window.open(blobUrl(file), '_blank');
  return null;
}

/** Through the window's own dialog, or into the browser's downloads; what to say afterwards, or nothing. */
export async function savePdf(file: PaperFile, words: SavedWords): Promise<string | null> {
  const saved = await shell.saveFile(file.name, file.base64);
  if (!saved.available) {
    downloadPdf(file);
    return words.downloaded;
  }
  if (saved.failed) return words.notSaved;
  return saved.path ? words.saved(saved.path) : null;
}
