import { dayOfIso, type IsoDay, yearOfDay } from '../../../shared/kernel/day.ts';
import type { Batch, CountedStage } from '../../../shared/model/batch.ts';
import { CELLS_LIMIT } from '../../../shared/model/fields.ts';
import { checkStageCounts } from '../../engine/yield/stage-counts.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { keepTally } from '../tally-keeping.ts';
import { checkFree, type Draft, type DraftSetting, SIGNS } from './draft.ts';
import { hiveOf } from './draft-queen.ts';
import type { RowReader } from './row-reader.ts';

type Counted = Readonly<Record<CountedStage, number | null>>;

/** A batch of a past season with its counts, as one bar. It is closed: its calendar has nothing left to say. */
export function draftCounts(row: RowReader, setting: DraftSetting): Draft | null {
  const code = row.needed('code', SIGNS.code);
  const givenOn = row.raw('larvaeGivenOn') === '' ? row.note('larvaeGivenOn', 'empty') : row.day('larvaeGivenOn');
  const countedOn = row.day('countedOn') ?? givenOn;
  const method = row.choice('method', ({ methods }) => methods) ?? setting.choice.method;
  const breederId = hiveOf(row, 'breeder', setting);
  const builderId = hiveOf(row, 'builder', setting);
  const note = row.text('note', SIGNS.note);
  const counted = countsOf(row);
  if (code === null || givenOn === null || countedOn === null) return null;
  checkFree(row, 'code', code, setting, setting.tables.batches.where({ code }).length > 0);
  const batch: Batch = {
    id: setting.ids.next(),
    code,
    season: yearOfDay(dayOfIso(givenOn)),
    method,
    methodCopyId: null,
    // The comb tells a cut-comb calendar apart; of a batch that is over only its counts are asked.
    comb: method === 'cut-comb-edge' ? 'drawn' : null,
    builderType: 'queenless',
    breederId,
    builderId,
    anchorStep: 'give-larvae',
    anchorOn: givenOn,
    larvaAgeFromHours: null,
    sealedCelsius: null,
    larvaAgeToHours: null,
    cellsPlanned: counted.given,
    practice: false,
    note,
    lesson: null,
    closedOn: countedOn,
  };
  return { yard: null, write: (tables) => writeBatch(tables, batch, counted, countedOn, setting) };
}

function countsOf(row: RowReader): Counted {
  const cells = (stage: CountedStage) => row.wholeNumber(stage, 0, CELLS_LIMIT);
  const counted = { given: cells('given'), taken: cells('taken'), removed: cells('removed'), sealed: cells('sealed') };
  const { given, taken, removed, sealed } = counted;
  const entered = taken === null ? null : taken - (removed ?? 0);
  for (const { field, kind } of checkStageCounts({ given, taken, sealed }, { sealed: entered })) {
    if (field === 'taken') row.note('taken', 'more-than-before', given ?? 0);
    else if (kind === 'enteredNotAWholeNumber') row.note('removed', 'more-than-before', taken ?? 0);
    else row.note('sealed', 'more-than-before', Math.max(0, entered ?? given ?? 0));
  }
  return counted;
}

function writeBatch(tables: Tables, batch: Batch, counted: Counted, countedOn: IsoDay, { ids }: DraftSetting): void {
  tables.batches.insert(batch);
  const barId = ids.next();
  tables.bars.insert({ id: barId, batchId: batch.id, number: 1 });
  for (const [stage, cells] of Object.entries(counted) as [CountedStage, number | null][]) {
    if (cells === null) continue;
    const day = stage === 'given' ? batch.anchorOn : countedOn;
    tables.counts.insert({ id: ids.next(), batchId: batch.id, barId, stage, cells, countedOn: day });
  }
  keepTally(tables, batch.id);
}
