export function findChromium(options?: { install?: boolean; say?: (line: string) => void }): string | undefined;
export const CHROMIUM_ARGS: readonly string[];
