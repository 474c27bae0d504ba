import type { z } from 'zod';
import type { ImportWorkbook, WorkbookImported } from '../../../shared/contract/import.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { hasCalendar } from '../batch-calendar.ts';
import type { Desk } from '../operation.ts';
import { storedSettings } from '../stored-settings.ts';
import { keepTally } from '../tally-keeping.ts';
import { type Placed, planWhole, tableOf, type WholePlan } from './whole-plan.ts';
import { isOwnMark, WHOLE_KEYS } from './whole-workbook.ts';

/** Takes in a file of everything: a safety copy first, then all rows and settings as one change, or none. */
export function importWorkbook(desk: Desk, input: z.infer<typeof ImportWorkbook>): Result<WorkbookImported, Refusal> {
  const planned = planWhole(desk, input);
  if (!planned.ok) return planned;
  const plan = planned.value;
  const { problems } = plan;
  if (plan.whole === null || problems.length > 0)
    return refuse({ kind: 'rows-with-problems', field: 'file', rows: problems.length, first: problems[0]?.row ?? 0 });
  const kept = desk.workbook.keepCopy('before-import');
  if (!kept.ok) return kept;
  try {
    return desk.workbook.change({ did: 'take-in-workbook', name: plan.name }, (tables) => {
      writePlan(tables, plan);
      // A batch whose days cannot be reckoned would stop every page that names it.
      if (!plan.whole.tables.batches.every((batch) => hasCalendar(tables, batch))) return contradicts();
      return ok({ added: plan.added.length, changed: plan.changed.length });
    });
  } catch (error) {
    // A rule of the file that the checks above do not know yet; all of the change was taken back.
    if (!isBrokenRule(error)) throw error;
    return contradicts();
  }
}

const contradicts = () =>
  refuse({ kind: 'file-unreadable', field: 'file', trouble: { reason: 'contradicts' } } as const);

function writePlan(tables: Tables, { whole, added, changed }: Extract<WholePlan, { readonly added: unknown }>): void {
  for (const { key, row } of mothersFirst(added)) tableOf(tables, key).insert(row);
  for (const { key, row } of changed) tableOf(tables, key).update(row);
  // Sums are counted anew rather than believed.
  for (const { id } of whole.tables.batches) keepTally(tables, id);
  for (const [key, value] of Object.entries(whole.settings)) if (!isOwnMark(key)) tables.settings.put(key, value);
  // Who is typing here goes on typing, also where the file has other people.
  const { people, writer } = storedSettings(tables.settings);
  if (writer !== null && !people.includes(writer)) tables.settings.put('people', [...people, writer]);
}

/** More generations than a workbook can hold; a ring of mothers ends here and is declined by the file. */
const GENERATIONS = 60;

/** Queens may name their mother, who must be there first. All other rows stand in an order that needs no sorting. */
function mothersFirst(added: readonly Placed[]): readonly Placed[] {
  const ordered = added.filter(({ key }) => BEFORE_QUEENS.includes(key));
  let waiting = added.filter(({ key }) => key === 'queens');
  for (let generation = 0; waiting.length > 0; generation += 1) {
    const ids = new Set(waiting.map(({ row }) => row.id));
    const isReady = ({ row }: Placed) =>
      generation >= GENERATIONS || !('motherId' in row) || !ids.has(String(row.motherId));
    ordered.push(...waiting.filter(isReady));
    waiting = waiting.filter((one) => !isReady(one));
  }
  return [...ordered, ...added.filter(({ key }) => key !== 'queens' && !BEFORE_QUEENS.includes(key))];
}

const BEFORE_QUEENS: readonly Placed['key'][] = WHOLE_KEYS.slice(0, WHOLE_KEYS.indexOf('queens'));

const isBrokenRule = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && String(error.code).startsWith('SQLITE_CONSTRAINT');
