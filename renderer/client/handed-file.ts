import { newId } from './hooks.ts';

/** A file the person chose, as it travels to the workbook. */
export interface HandedFile {
  /** Another one with every choice, also of a file of the same name and size. */
  readonly chosen: string;
  readonly name: string;
  readonly base64: string;
}

/** Reads a chosen file; the page only passes it on. */
export function readHandedFile(file: File): Promise<HandedFile> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () =>
      resolve({ chosen: newId(), name: file.name, base64: String(reader.result).replace(/^[^,]*,?/, '') });
    reader.onerror = () => reject(reader.error ?? new Error('not read'));
    reader.readAsDataURL(file);
  });
}
