import type { PrintedFile } from '../../../shared/contract/print.ts';

function blobUrl({ base64, mediaType }: PrintedFile): string {
  const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  return URL.createObjectURL(new Blob([bytes], { type: mediaType }));
}

/** In a browser the file goes to the downloads. */
export function downloadPdf(file: PrintedFile): void {
  const link = document.createElement('a');
  link.href = blobUrl(file);
  link.download = file.name;
  link.click();
}

/** In a browser the PDF opens beside the page, from where the system's own print window is called. */
export async function openPdf(file: PrintedFile): Promise<null> {
  window.open(blobUrl(file), '_blank');
  return null;
}
