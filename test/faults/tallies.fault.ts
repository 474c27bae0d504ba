import { stageCountsOf, stageTotal } from '../../main/engine/yield/stage-rate.ts';
import { importTable } from '../../main/operations/files/import-table.ts';
import type { Desk } from '../../main/operations/operation.ts';
import { countedBatches } from '../../main/operations/season/counted-batches.ts';
import { keepSeasonSums } from '../../main/operations/season/keep-season-sums.ts';
import { countTally } from '../../main/operations/tally-keeping.ts';
import type { GroupSum } from '../../main/workbook/workbook.ts';
import { COMPARE_FACTORS, RATE_STAGES } from '../../shared/contract/season.ts';
import { Draw } from '../builders/draw.ts';
import { aTableChoice } from '../builders/handed-table.ts';
import { randomAct } from '../builders/random-act.ts';
import { aWatchedDesk } from '../builders/watched-workbook.ts';
import type { FaultReport } from './fault-report.ts';

/** A fresh workbook after so many edits, so that batches stay as many as a person has. */
const EDITS_EACH = 250;
const CONTROL_EDITS = 250;

/**
 * The sums kept beside each batch, and those kept of each season by one factor or two in turn, against a full recount
 * after every edit, undo, redo and import: never a difference.
 */
export async function faults({ short }: { readonly short: boolean }): Promise<readonly FaultReport[]> {
  const edits = short ? 500 : 10_000;
  const sound: Walked = nothingWalked();
  for (let seed = 1; sound.made < edits; seed += 1) await walk(sound, new Draw(seed), EDITS_EACH, () => {});
  const control: Walked = nothingWalked();
  await walk(control, new Draw(1), CONTROL_EDITS, (desk, draw) => {
    // More removed than taken is refused by the table itself, so that would be noticed in another way.
    const count = draw.from(desk.workbook.tables.counts.all().filter(({ stage }) => stage !== 'removed'));
    if (count)
      desk.workbook.change({ did: 'build-demo' }, (tables) => {
        tables.counts.update({ ...count, cells: count.cells + 1 });
        return { ok: true, value: null };
      });
  });
  return [
    {
      harness: 'kept sums against a recount',
      outcome:
        sound.different === 0 && sound.seasonsDifferent === 0 && sound.turned > 0 && sound.imported > 0
          ? 'passed'
          : 'failed',
      figures: [
        `tallies edits ${sound.made}, undos and redos ${sound.turned}, imports ${sound.imported}`,
        `tallies compared ${sound.compared}`,
        `tallies different ${sound.different}`,
        `season sums compared ${sound.seasons}, different ${sound.seasonsDifferent}`,
      ],
    },
    {
      harness: 'kept sums control: counts changed behind their back must be noticed',
      outcome: control.different > 0 ? 'passed' : 'failed',
      figures: [`tallies control different ${control.different} of ${control.compared}`],
    },
  ];
}

const nothingWalked = (): Walked => ({
  made: 0,
  turned: 0,
  imported: 0,
  compared: 0,
  different: 0,
  seasons: 0,
  seasonsDifferent: 0,
});

interface Walked {
  made: number;
  turned: number;
  imported: number;
  compared: number;
  different: number;
  /** Comparisons of all seasons, and those that were not as counted anew. */
  seasons: number;
  seasonsDifferent: number;
}

async function walk(walked: Walked, draw: Draw, edits: number, spoil: (desk: Desk, draw: Draw) => void): Promise<void> {
  const { desk } = aWatchedDesk();
  for (let edit = 0; edit < edits; edit += 1) {
    await oneEdit(walked, desk, draw, edit);
    spoil(desk, draw);
    walked.made += 1;
    for (const { id } of desk.workbook.tables.batches.all()) {
      walked.compared += 1;
      const kept = JSON.stringify(desk.workbook.tables.tallies.get(id));
      if (kept !== JSON.stringify(countTally(desk.workbook.tables, id))) walked.different += 1;
    }
    walked.seasons += 1;
    if (!seasonSumsHold(desk, draw)) walked.seasonsDifferent += 1;
  }
  desk.workbook.close();
}

function seasonSumsHold({ workbook: { tables } }: Desk, draw: Draw): boolean {
  const [factor, other] = [draw.from(COMPARE_FACTORS) ?? 'method', draw.from(COMPARE_FACTORS) ?? 'method'];
  const and = other === factor ? null : other;
  const question = keepSeasonSums(tables, and ? [factor, and] : [factor], null);
  const counted = countedBatches(tables, { factor, and, season: null, leaveOutPractice: false });
  const anew = [...Map.groupBy(counted, ({ group }) => group.id)].map(([id, group]) => ({
    id,
    batches: group.length,
    sums: RATE_STAGES.map((stage) => stageTotal(group.map(({ tally }) => stageCountsOf(tally)[stage]))),
  }));
  const kept = tables.seasonSums
    .sums(question, null, false)
    .map(({ level, other: second, batches, stages }: GroupSum) => ({
      id: and ? `${level} ${second}` : level,
      batches,
      sums: RATE_STAGES.map((stage) => stages[stage]),
    }));
  return asText(kept) === asText(anew);
}

/** The whole way may be a fraction, and the order in which fractions are added up shows in the last digits. */
const asText = (groups: readonly { readonly id: string }[]): string =>
  JSON.stringify(
    groups.toSorted((a, b) => (a.id < b.id ? -1 : 1)),
    (_key, value: unknown) => (typeof value === 'number' ? Number(value.toFixed(9)) : value),
  );

async function oneEdit(walked: Walked, desk: Desk, draw: Draw, edit: number): Promise<void> {
  const turn = draw.below(10);
  if (turn === 0) walked.turned += desk.workbook.undo().ok ? 1 : 0;
  else if (turn === 1) walked.turned += desk.workbook.redo().ok ? 1 : 0;
  else if (edit % 50 === 49) {
    const [given, taken] = [20, draw.below(20)];
    const row = [`P${edit}`, `${2015 + draw.below(5)}-05-14`, given, taken, draw.below(taken + 1)];
    const text = `batch,grafted on,larvae,accepted,capped\n${row.join(',')}`;
    walked.imported += (await importTable(desk, aTableChoice(text, { kind: 'counts', dayOrder: 'year-first' }))).ok
      ? 1
      : 0;
  } else randomAct(desk, draw);
}
