import { yearColour } from '../../../shared/biology/year-colour.ts';
import type { LabelText } from '../../../shared/contract/print.ts';
import { type Day, yearOfDay } from '../../../shared/kernel/day.ts';
import type { Batch } from '../../../shared/model/batch.ts';
import type { Placement } from '../../../shared/model/mating-box.ts';
import type { Step } from '../../../shared/model/step.ts';
import type { Timetable } from '../../../shared/model/timetable.ts';
import { type DateOrder, paperDay } from '../../../shared/text/day-text.ts';
import { labelWords } from '../../../shared/text/english/labels.ts';
import { queens } from '../../../shared/text/english/queens.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { timetableOf } from '../batch-calendar.ts';
import { storedSettings } from '../stored-settings.ts';

/** What each label of a batch says, in walking order; days in the order the person chose. */
export const labelTexts = (tables: Tables, batch: Batch): readonly LabelText[] =>
  labelsWith(tables, batch, storedSettings(tables.settings).dateOrder);

/**
 * A label's words in one text, by placement: what is kept of a print, to tell later whether it is out of date. Always
 * with the day first, so that choosing another order of days makes no printed label wrong.
 */
export const labelRecords = (tables: Tables, batch: Batch): ReadonlyMap<string, string> =>
  new Map(labelsWith(tables, batch, 'day-first').map((label) => [label.placementId, labelAsText(label)]));

function labelsWith(tables: Tables, batch: Batch, order: DateOrder): readonly LabelText[] {
  const timetable = timetableOf(tables, batch);
  const breeder = batch.breederId === null ? null : tables.colonies.get(batch.breederId);
  const mother = breeder
    ? labelWords.mother([breeder.code, breeder.name].filter(Boolean).join(' '))
    : labelWords.noMother;
  const days = labelDays(timetable, order);
  const colour = queens.colours[yearColour(yearOfDay(timetable.emergence.expected))];
  return openPlacements(tables, batch).map(({ placement, box }) => ({
    placementId: placement.id,
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
): Pick<LabelText, 'handsOffUntil' | 'firstLookOn' | 'sealedBroodLookOn'> {
  const span = timetable.handsOff.find((one) => one.step === 'hands-off-mating');
  const dayOf = (step: Step): Day => {
    const found = timetable.steps.find((one) => one.step === step);
    return found ? (found.doneOn ?? found.expected) : timetable.emergence.latest;
  };
  return {
    handsOffUntil: paperDay(span?.to ?? timetable.emergence.latest, order),
    firstLookOn: paperDay(dayOf('first-look'), order),
    sealedBroodLookOn: paperDay(dayOf('sealed-brood-look'), order),
  };
}

const labelAsText = (label: LabelText): string =>
  [
    label.box,
    label.batch,
    label.mother,
    label.yearColour,
    label.handsOffUntil,
    label.firstLookOn,
    label.sealedBroodLookOn,
  ].join('\n');
