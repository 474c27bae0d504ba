import { WORKBOOK_ENDING } from './file-marks.ts';

/** Signs that some system does not allow in file names, and control signs (Windows naming rules, the strictest). */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what must not get into a file name
const FORBIDDEN = /[<>:"/\\|?*\u0000-\u001f\u007f]/g;
/** Names that Windows keeps for devices, whatever the ending. */
const DEVICE_NAME = /^(con|prn|aux|nul|com\d|lpt\d)$/i;
const LONGEST = 80;

/** A file name that every system accepts, close to the name the person gave. */
export function fileNameOf(workbookName: string): string {
  const cleaned = workbookName.normalize('NFC').replace(FORBIDDEN, ' ').replace(/\s+/g, ' ').trim();
  const short = [...cleaned]
    .slice(0, LONGEST)
    .join('')
    .replace(/^\.+/, '')
    .replace(/[. ]+$/, '')
    .trim();
  const usable = short === '' ? 'Workbook' : DEVICE_NAME.test(short) ? `${short} workbook` : short;
  return `${usable}${WORKBOOK_ENDING}`;
}
