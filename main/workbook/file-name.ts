import { WORKBOOK_ENDING } from './file-marks.ts';

/** Signs that some system does not allow in file names, and control signs (Windows naming rules, the strictest). */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what must not get into a file name
const FORBIDDEN = /[<>:"/\\|?*\u0000-\u001f\u007f]/g;
/** Names that Windows keeps for devices, whatever the ending. */
const DEVICE_NAME = /^(con|prn|aux|nul|com\d|lpt\d)$/i;
/** Bytes in UTF-8 of a name without its ending. File systems end at 255; room is left for `.new`, `-wal`, copies. */
const LONGEST = 160;

/** A file name that every system accepts, close to the name the person gave. */
export function fileNameOf(workbookName: string): string {
  const cleaned = workbookName.normalize('NFC').replace(FORBIDDEN, ' ').replace(/\s+/g, ' ').trim();
  const short = firstBytes(cleaned.replace(/^[. ]+/, ''), LONGEST).replace(/[. ]+$/, '');
  const usable = short === '' ? 'Workbook' : DEVICE_NAME.test(short) ? `${short} workbook` : short;
  return `${usable}${WORKBOOK_ENDING}`;
}

/** The longest beginning of whole signs that fits. */
function firstBytes(text: string, bytes: number): string {
  let used = 0;
  let kept = '';
  for (const sign of text) {
    used += Buffer.byteLength(sign);
    if (used > bytes) break;
    kept += sign;
  }
  return kept;
}
