/** Opens a workbook and compares its seasons by method, then prints the CPU milliseconds of its whole life so far. */
import { compareSeason } from '../../main/operations/season/compare-season.ts';
import { readMigrations } from '../../main/workbook/migrations.ts';
import { openWorkbookFile } from '../../main/workbook/open-workbook.ts';
import { dayOfIso } from '../../shared/kernel/day.ts';

const [file = '', migrations = '', safetyFolder = ''] = process.argv.slice(2);
const now = () => new Date().toISOString();
const opened = openWorkbookFile(file, { migrations: readMigrations(migrations), safetyFolder, now });
if (!opened.ok) throw new Error(opened.refusal.kind);
const notAsked = (): never => {
  throw new Error('a comparison needs neither ids nor the thread that reckons');
};
const { rows } = compareSeason(
  {
    workbook: opened.value,
    today: dayOfIso('2026-11-30'),
    ids: { next: notAsked },
    reckon: notAsked,
    computerLanguage: 'en',
  },
  { factor: 'method', and: null, season: null, leaveOutPractice: true },
);
if (rows.length === 0) throw new Error('the seasons are not there');
const { user, system } = process.cpuUsage();
console.log((user + system) / 1000);
process.exit(0);
