/** The folder part of a path of either kind of system. */
export function folderOf(file: string): string {
  return file.slice(0, Math.max(0, file.search(/[\\/][^\\/]*$/)));
}
