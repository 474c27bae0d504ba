/**
 * Saves as often as asked, each a form of so many counts. Arguments: folder, saves, counts a form. Run under strace by the
 * bench, which counts how often the drive is told to flush.
 */
import { aCountedWorkbook, saveForm } from './counted-workbook.ts';

const [folder = '', saves = '0', counts = '1'] = process.argv.slice(2);
const workbook = aCountedWorkbook(folder);
for (let save = 1; save <= Number(saves); save += 1) saveForm(workbook, save, Number(counts));
// Left as a crash would leave it: closing cleanly flushes too, and is not what is counted.
process.exit(0);
