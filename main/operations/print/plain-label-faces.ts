import { yearColour } from '../../../shared/biology/year-colour.ts';
import type { PlainLabelKind } from '../../../shared/contract/plain-labels.ts';
import type { LabelFace } from '../../../shared/contract/print.ts';
import { compareCodes } from '../../../shared/kernel/box-codes.ts';
import { yearOfDay } from '../../../shared/kernel/day.ts';
import type { Batch } from '../../../shared/model/batch.ts';
import type { Queen } from '../../../shared/model/queen.ts';
import { paperDay } from '../../../shared/text/day-text.ts';
import type { Words } from '../../../shared/text/english/english.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { timetableOf } from '../batch-calendar.ts';
import { hiveRef, tallyOf } from '../batch-lines.ts';
import type { Desk } from '../operation.ts';
import { storedSettings } from '../stored-settings.ts';
import { workbookWords } from '../workbook-words.ts';

const PLAIN = { handsOffUntil: null, linesAsTheyAre: true } as const;
const MOST_CAGES = 200;

/** Batches with bars, the newest first. */
export const labelledBatches = (tables: Tables): readonly Batch[] =>
  tables.batches
    .all()
    .filter((batch) => batch.closedOn === null && tables.bars.where({ batchId: batch.id }).length > 0)
    .toReversed();

/** What each label says: bars and cages of one batch, or every queen still with the person. */
export function plainFaces(desk: Desk, kind: PlainLabelKind, batch: Batch | null): readonly LabelFace[] {
  const { tables } = desk.workbook;
  const words = workbookWords(desk);
  if (kind === 'queens') return queenFaces(tables, words);
  if (!batch) return [];
  const face = batchFace(tables, batch, words);
  if (kind === 'bars')
    return tables.bars
      .where({ batchId: batch.id })
      .toSorted((a, b) => a.number - b.number)
      .map(({ number }) => ({ ...face, batch: words.plainLabels.bar(number) }));
  const { sealed, taken, given } = tallyOf(tables, batch);
  const cages = Math.min(MOST_CAGES, sealed ?? taken ?? given ?? batch.cellsPlanned ?? 0);
  return Array.from({ length: cages }, (_, index) => ({ ...face, batch: words.plainLabels.cage(index + 1) }));
}

function batchFace(tables: Tables, batch: Batch, words: Words): LabelFace {
  const order = storedSettings(tables.settings).dateOrder;
  const timetable = timetableOf(tables, batch);
  const breeder = hiveRef(tables, batch.breederId);
  const { earliest, expected } = timetable.emergence;
  return {
    ...PLAIN,
    language: words.language,
    box: batch.code,
    batch: '',
    mother: breeder
      ? words.labels.mother([breeder.code, breeder.name].filter(Boolean).join(' '))
      : words.labels.noMother,
    yearColour: words.queens.colours[yearColour(yearOfDay(expected))],
    firstLookOn: words.plainLabels.emerges(paperDay(earliest, order, words.language)),
    sealedBroodLookOn: words.plainLabels.given(paperDay(timetable.larvaeGivenOn, order, words.language)),
  };
}

const HERE: ReadonlySet<Queen['place']> = new Set(['in-box', 'caged', 'in-hive']);

function queenFaces(tables: Tables, words: Words): readonly LabelFace[] {
  const order = storedSettings(tables.settings).dateOrder;
  return tables.queens
    .all()
    .filter((queen) => HERE.has(queen.place))
    .toSorted((a, b) => compareCodes(a.number, b.number))
    .map((queen) => {
      const breeder = hiveRef(tables, queen.breederId);
      const mother = breeder ? words.labels.mother(breeder.code) : words.labels.noMother;
      const lines = [
        queen.firstEggsOn === null ? '' : words.plainLabels.eggs(paperDay(queen.firstEggsOn, order, words.language)),
        queen.provedOn === null ? '' : words.plainLabels.proved(paperDay(queen.provedOn, order, words.language)),
      ].filter(Boolean);
      return {
        ...PLAIN,
        language: words.language,
        box: queen.number,
        batch: words.queens.colours[yearColour(queen.bornIn)],
        mother: queen.motherLine ? words.plainLabels.line(queen.motherLine) : mother,
        yearColour: '',
        firstLookOn: lines[0] ?? '',
        sealedBroodLookOn: lines[1] ?? '',
      };
    });
}
