import { yearColour } from '../../shared/biology/year-colour.ts';
import type { LabelPart, LabelText, WaitingLabel } from '../../shared/contract/print.ts';
import { type Day, yearOfDay } from '../../shared/kernel/day.ts';
import type { Language } from '../../shared/kernel/language.ts';
import type { Batch } from '../../shared/model/batch.ts';
import type { LabelPrint } from '../../shared/model/label-print.ts';
import type { Placement } from '../../shared/model/mating-box.ts';
import type { Step } from '../../shared/model/step.ts';
import type { Timetable } from '../../shared/model/timetable.ts';
import { type DateOrder, paperDay } from '../../shared/text/day-text.ts';
import { english, type Words } from '../../shared/text/english/english.ts';
import type { Tables } from '../workbook/workbook.ts';
import { timetableOf } from './batch-calendar.ts';
import type { Desk } from './operation.ts';
import { storedSettings } from './stored-settings.ts';
import { workbookWords } from './workbook-words.ts';

/** What each label of a batch says, in walking order; days in the order the person chose. */
export const labelTexts = (desk: Desk, batch: Batch): readonly LabelText[] => {
  const { tables } = desk.workbook;
  return labelsWith(tables, batch, storedSettings(tables.settings).dateOrder, workbookWords(desk));
};

/**
 * The labels as they are kept of a print, to tell later which are out of date: always in English with the day
 * first, so that choosing another language or order of days makes no printed label wrong.
 * @param timetable the days they carry; the batch's own where no other is given.
 */
export const labelRecords = (tables: Tables, batch: Batch, timetable?: Timetable): readonly LabelText[] =>
  labelsWith(tables, batch, 'day-first', english, timetable);

function labelsWith(
  tables: Tables,
  batch: Batch,
  order: DateOrder,
  words: Words,
  timetable: Timetable = timetableOf(tables, batch),
): readonly LabelText[] {
  const breeder = batch.breederId === null ? null : tables.colonies.get(batch.breederId);
  const mother = breeder
    ? words.labels.mother([breeder.code, breeder.name].filter(Boolean).join(' '))
    : words.labels.noMother;
  const days = labelDays(timetable, order, words.language);
  const colour = words.queens.colours[yearColour(yearOfDay(timetable.emergence.expected))];
  return openPlacements(tables, batch).map(({ placement, box }) => ({
    placementId: placement.id,
    language: words.language,
    box,
    batch: batch.code,
    mother,
    yearColour: colour,
    ...days,
  }));
}

export function openPlacements(
  tables: Tables,
  batch: Batch,
): readonly { readonly placement: Placement; readonly box: string }[] {
  return tables.placements
    .where({ batchId: batch.id, endedOn: null })
    .flatMap((placement) => {
      const box = tables.boxes.get(placement.boxId);
      return box ? [{ placement, box: box.code, order: box.walkOrder }] : [];
    })
    .toSorted((a, b) => a.order - b.order);
}

/** The three days a box label carries; a batch with boxes always has them. */
function labelDays(
  timetable: Timetable,
  order: DateOrder,
  language: Language,
): Pick<LabelText, 'handsOffUntil' | 'firstLookOn' | 'sealedBroodLookOn'> {
  const span = timetable.handsOff.find((one) => one.step === 'hands-off-mating');
  const dayOf = (step: Step): Day => {
    const found = timetable.steps.find((one) => one.step === step);
    return found ? (found.doneOn ?? found.expected) : timetable.emergence.latest;
  };
  return {
    handsOffUntil: paperDay(span?.to ?? timetable.emergence.latest, order, language),
    firstLookOn: paperDay(dayOf('first-look'), order, language),
    sealedBroodLookOn: paperDay(dayOf('sealed-brood-look'), order, language),
  };
}

/** The parts of a label in the order in which they are kept of a print. */
const PARTS: readonly LabelPart[] = [
  'box',
  'batch',
  'mother',
  'yearColour',
  'handsOffUntil',
  'firstLookOn',
  'sealedBroodLookOn',
];

/** A label's words in one text: what is kept of a print, to tell later whether it is out of date. */
export const labelAsText = (label: LabelText): string => PARTS.map((part) => label[part]).join('\n');

/** What a label says otherwise than when it was printed. */
export function labelChanges(label: LabelText, printed: string): WaitingLabel['changes'] {
  const was = printed.split('\n');
  return PARTS.map((part, index) => ({ part, was: was[index] ?? '', now: label[part] })).filter(
    (change) => change.was !== change.now,
  );
}

/** The last print of a box's label; null when there was none. */
export const lastPrint = (tables: Tables, placementId: string): LabelPrint | null =>
  tables.labelPrints.where({ placementId }).at(-1) ?? null;

/** Of the labels to be kept, those that were printed and no longer say what is right. */
export const staleLabels = (tables: Tables, labels: readonly LabelText[]): readonly LabelText[] =>
  labels.filter((label) => {
    const printed = lastPrint(tables, label.placementId);
    return printed !== null && printed.words !== labelAsText(label);
  });
