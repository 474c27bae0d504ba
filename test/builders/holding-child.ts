/** Begins a workbook and holds it open. Each message is the name of a yard to save; an empty one closes the workbook. */
import { basename } from 'node:path';
import { createWorkbookFile } from '../../main/workbook/create-workbook.ts';
import { readMigrations } from '../../main/workbook/migrations.ts';
import { ok } from '../../shared/kernel/result.ts';
import { aYard } from './yard.ts';

const [file = '', migrations = '', safetyFolder = ''] = process.argv.slice(2);
const setting = { migrations: readMigrations(migrations), safetyFolder, now: () => new Date().toISOString() };
const begun = createWorkbookFile({ file, name: basename(file, '.ripecell'), kind: 'real' }, setting);
if (!begun.ok) throw new Error(begun.refusal.kind);
const workbook = begun.value;

process.on('message', (name: string) => {
  if (name === '') workbook.close();
  else
    workbook.change({ did: 'other' }, (tables) => {
      tables.yards.insert(aYard({ id: `yard-${name}`, name }));
      return ok(null);
    });
  process.send?.('done');
});
process.on('disconnect', () => process.exit());
process.send?.('ready');
