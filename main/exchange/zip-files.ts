import { strToU8, type Zippable, zipSync } from 'fflate';

/** Named texts and bytes as one zip. Its entries carry no time of making, so that the same content is the same file. */
export function zipBytes(files: Readonly<Record<string, string | Uint8Array>>): Uint8Array {
  const entries: Zippable = {};
  for (const [name, content] of Object.entries(files))
    entries[name] = typeof content === 'string' ? strToU8(content) : content;
  return zipSync(entries, { mtime: FIRST_ZIP_DAY, level: 6 });
}

/** The earliest day a zip can name. */
const FIRST_ZIP_DAY = new Date(1980, 0, 1, 12);
