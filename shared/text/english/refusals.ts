import type { Notice, Refusal } from '../../contract/refusal.ts';
import type { Day, IsoDay } from '../../kernel/day.ts';
import type { CalendarRefusal } from '../../model/timetable.ts';
import { calibrationWords, ownSheets } from './calibration.ts';
import { changeSentence } from './history.ts';
import { lookWords } from './looks.ts';
import { losses } from './losses.ts';
import { STEP_TITLES } from './step-titles.ts';
import { FILE_TROUBLE, IMPORT_FIELD_WORDS } from './tables-in.ts';

type DayText = (day: Day | IsoDay) => string;
type Own = Exclude<Refusal, CalendarRefusal>;
type Sentences<Union extends { readonly kind: string }> = {
  readonly [Kind in Union['kind']]: (refusal: Extract<Union, { kind: Kind }>, day: DayText) => string;
};

const cells = (n: number) => (n === 1 ? '1 cell' : `${n} cells`);
const title = (step: string) => `“${STEP_TITLES[step as keyof typeof STEP_TITLES] ?? step}”`;

const NOT_SAVED = {
  'disk-full': 'Not saved: the disk is full. What you typed is still here. Make room, then save again.',
  'drive-error':
    'Not saved: the drive reported an error. What you typed is still here. Save the workbook elsewhere, on another drive, before you go on.',
  'read-only': 'Not saved: this workbook is open for reading only. Save a copy elsewhere to write in it.',
  'file-replaced':
    'Not saved: another program has put a different file in the workbook’s place. What you typed is still here. Save the workbook elsewhere, then save again.',
} as const;

const SHEET_TROUBLE = {
  'too-small': (mm: number) =>
    `${mm} mm too small for a box number and its days. Measure again, or choose larger labels.`,
  overlap: (mm: number) =>
    `labels would overlap by ${mm} mm. The pitch is the width or height of a label and the gap to the next.`,
  'beyond-paper': (mm: number) => `the last label would run ${mm} mm over the paper. Check margin, pitch and number.`,
} as const;

const READING_TROUBLE = {
  scaled: (mm: number) =>
    `${mm} mm for a bar of 100 means that the page was printed to fit. Print it again at “Actual size”, then measure.`,
  far: (mm: number) => `${mm} mm is too far from the 20 mm drawn. Measure to the cross again.`,
} as const;

const NO_COPY = {
  'disk-full':
    'No copy was made: the disk is full. Your workbook and the older copies are as they were. Make room, then try again.',
  'drive-error':
    'No copy was made: the drive reported an error. Your workbook and the older copies are as they were. Try again, or choose a folder on another drive.',
  'read-only': 'No copy was made: nothing can be written there. Your workbook is as it was. Choose another folder.',
} as const;

const ERRAND_TROUBLE = {
  'not-an-errand': 'This file is no errand of Ripecell. Choose the file that came back with the looks.',
  'other-version':
    'This errand was made by another version of Ripecell. Open both on the same version, hand it out anew, or type the looks by hand.',
  damaged: 'This errand was harmed on its way. Ask for the file once more; nothing of it was taken in.',
} as const;

const EXPECTED = {
  number: 'Type a whole number.',
  day: 'Type a day, such as 14 May, 14/5, +3 or today.',
  text: 'Type a shorter text, or fill it in where it is empty.',
  choice: 'Choose one of the list.',
} as const;

/** What a field is called on screen, for refusals that only know its name in the input. */
const FIELDS: Readonly<Record<string, string>> = {
  anchorOn: 'Day',
  cellsPlanned: 'Cells',
  countedOn: 'Day of counting',
  given: 'Given',
  taken: 'Taken',
  removed: 'Removed',
  sealed: 'Sealed',
  code: 'Code',
  name: 'Name',
  placedOn: 'Day',
  lookedOn: 'Day',
  doneOn: 'Day done',
  seenOn: 'Day seen',
  closedOn: 'Day closed',
  boxes: 'Boxes',
  codes: 'Boxes',
  note: 'Note',
  startAt: 'First free label',
  strength: 'Strength, 1 to 5',
  food: 'Food, 1 to 5',
  number: 'Number',
  movedOn: 'Day',
  toldOn: 'Day',
  walkOrder: 'Place in the walk',
  row: 'Row or landmark',
  scoredOn: 'Day',
  testedOn: 'Day',
  counted: 'Counted',
  outOf: 'Out of',
  hours: 'After hours',
  product: 'Product',
  amount: 'Amount',
  ownFeed: 'What it is',
  fedOn: 'Day',
  places: 'Hives and boxes',
  reason: 'Because of',
  paper: 'Paper',
  place: 'Place',
  fromOn: 'From',
  toOn: 'Until',
  goneTo: 'To whom',
  price: 'Price',
  toldBy: 'Told by',
  bornIn: 'Born in',
  motherLine: 'Mother line',
};

const fieldName = (field: string): string => FIELDS[field.split('.').at(-1) ?? field] ?? 'This field';

/** One sentence a refusal: the field, what is wrong, and the remedy. A new kind without one does not compile. */
export const REFUSALS: Sentences<Own> = {
  'errand-unreadable': ({ reason }) => ERRAND_TROUBLE[reason],
  'errand-not-decided': ({ box, on }, day) =>
    `${box} on ${day(on)} has two different looks. Choose which one is to stand, then take the looks in.`,
  'no-box-for-errand': () => 'Boxes: name at least one box that is in use, such as K01-K18.',
  'no-workbook-open': () => 'No workbook is open. Open one, or begin a new one.',
  'not-saved': ({ reason }) => NOT_SAVED[reason],
  'not-valid': ({ field, expected }) => `${fieldName(field)}: ${EXPECTED[expected]}`,
  'file-not-found': ({ file }) =>
    `File: there is nothing at ${file}. Check the name, or look for it in another folder.`,
  'file-not-readable': ({ file }) =>
    `File: this account may not read ${file}. Ask its owner for the right to, or copy it to your documents.`,
  'drive-refused': ({ file, reason }) =>
    reason === 'disk-full'
      ? `File: the disk is full, so ${file} could not be opened or made. Nothing in it was changed. Make room, or choose another drive.`
      : `File: the drive reported an error with ${file}. Nothing in it was changed. Look whether the drive is connected, then try again; or open a safety copy.`,
  'folder-not-found': ({ folder }) => `Folder: there is no folder ${folder}. Make it first, or leave the usual place.`,
  'file-exists': ({ file }) =>
    `Name: there is a workbook of this name already at ${file}. Choose another name, or open that one.`,
  'not-a-workbook': ({ file }) =>
    `File: ${file} is not a Ripecell workbook. Nothing in it was changed. Choose a file that ends in .ripecell.`,
  'workbook-newer': ({ version }) =>
    `File: this workbook was made by a newer version (${version}) of the program. Nothing in it was changed. Get the newer program, then open it.`,
  'not-practice': () =>
    'Nothing was set back: the open workbook is not the practice workbook of this computer. Open that one under Class, then set it back there.',
  'package-broken': ({ file }) =>
    `File: ${file} is no package of a workbook, or was harmed on the way. Nothing was unpacked. Copy it once more from the other computer.`,
  'workbook-damaged': ({ file }) =>
    `File: ${file} is damaged. It was left as it is. Open the latest safety copy instead.`,
  'workbook-open-elsewhere': () =>
    'File: this workbook is open in another window or program. Go on there, close it there first, or look at it here without changing it.',
  'place-not-writable': ({ folder }) =>
    `Folder: nothing can be written in ${folder}. Choose another folder, such as your documents.`,
  'no-workbook-to-copy': () => 'There is no workbook of your own open to make a copy of. Open it first.',
  'copy-not-made': ({ reason }) => NO_COPY[reason],
  'copy-not-found': () => 'Copy: this safety copy is no longer where it was. Choose another one from the list.',
  'copy-not-sound': ({ file }) =>
    `Copy: ${file} is damaged or not what it was when it was made. It was left as it is. Choose another copy.`,
  'second-place-same': ({ folder }) =>
    `Second place: ${folder} holds the workbook or its first copies already. Choose a folder on another drive.`,
  'nothing-to-undo': () => 'Nothing to undo: this workbook has no change left that could be taken back.',
  'nothing-to-redo': () => 'Nothing to redo: what was undone was followed by a new change, or nothing was undone.',
  'changed-since': ({ way, words }) =>
    `“${changeSentence(words)}” cannot be ${way === 'undo' ? 'undone' : 'done again'}: something else has changed the same rows since. Nothing was touched. Correct it by hand where it stands.`,
  'batch-not-found': () => 'This batch is no longer in the workbook. Go back to the list of batches.',
  'batch-code-taken': ({ code }) =>
    `Code: there is a batch ${code} already. Leave the code empty for the next free one.`,
  'more-taken-than-given': ({ given, taken }) =>
    `Taken: ${cells(taken)} taken is more than the ${given} given. Correct one of the two.`,
  'more-sealed-than-taken': ({ taken, sealed }) =>
    `Sealed: ${cells(sealed)} sealed is more than the ${taken} that were taken and left in. Correct one of the two.`,
  'more-sealed-than-given': ({ given, sealed }) =>
    `Sealed: ${cells(sealed)} sealed is more than the ${given} given. Correct one of the two.`,
  'more-sealed-than-left': ({ given, removed, sealed }) =>
    `Sealed: ${cells(sealed)} sealed is more than could be left of ${given} given with ${removed} removed. Correct one of the three.`,
  'more-removed-than-taken': ({ taken, removed }) =>
    `Removed: ${cells(removed)} removed is more than the ${taken} there were. Correct one of the two.`,
  'more-placed-than-sealed': ({ placed, sealed }) =>
    `Sealed: ${cells(placed)} are in boxes already, so ${sealed} sealed cannot be. Correct the count, or take cells out of boxes first.`,
  'day-before-start': ({ field, day, start }, text) =>
    `${fieldName(field)}: ${text(day)} lies before this batch began on ${text(start)}. Type that day or a later one.`,
  'writer-not-listed': ({ name }) =>
    `${name} is not among those who type in this workbook. Add the name under Settings, then choose it.`,
  'result-key-twice': ({ key, results: [one, other] }) =>
    `Result keys: “${key}” cannot be both “${lookWords[one].name}” and “${lookWords[other].name}”. Give one of them another letter.`,
  'comb-needed': () => 'Comb: say whether the comb is drawn already or starts from foundation strips; the days differ.',
  'builder-in-use': ({ builder, batch, until }, text) =>
    `Builder: ${builder} holds the cells of ${batch} until ${text(until)}. Choose another builder, or start on that day or later.`,
  'hive-code-taken': ({ code }) =>
    `Hive: there is a hive ${code} already. Choose it from the list, or type another code.`,
  'hive-not-found': () => 'Hive: this hive is no longer in the workbook. Choose another one.',
  'bar-not-found': () => 'This bar is no longer in the batch. Reload the page of the batch.',
  'step-not-in-timetable': ({ step }) =>
    `${title(step)} is not part of this batch’s timetable. Choose one of the steps listed there.`,
  'step-already-done': ({ step }) => `${title(step)} is marked as done already. Take the mark back first.`,
  'nothing-lost': ({ stage }) =>
    `How many: nothing is known to be ${losses.stages[stage]} in this batch. Type the counts or looks first.`,
  'more-reasons-than-lost': ({ lost, explained }) =>
    `How many: with this the reasons would come to ${explained}, but only ${lost} were lost. Type a smaller number.`,
  'step-needed': ({ step }) =>
    `${title(step)} cannot be dropped: the bees leave no choice. Mark it as done on its day, or close the batch.`,
  'move-past-window': ({ earliest, latest }, text) =>
    `New day: the bees leave only ${text(earliest)} to ${text(latest)} for this. Choose a day in between.`,
  'observation-not-found': () => 'This sighting is no longer in the batch. Reload the page of the batch.',
  'method-name-in-use': ({ name }) => `Name: you have a method ${name} already. Type another name.`,
  'hive-code-in-use': ({ code }) => `Code: there is a hive ${code} already. Type another code.`,
  'yard-name-in-use': ({ name }) => `Name: there is a yard ${name} already. Type another name.`,
  'yard-not-found': () => 'Yard: this yard is no longer in the workbook. Choose another one.',
  'hive-missing': () => 'This hive is no longer in the workbook. Go back to the list of hives.',
  'box-codes-unreadable': ({ text }) =>
    `Boxes: “${text}” cannot be read. Type codes such as K01-K18, or K01, K03, K07.`,
  'box-code-taken': ({ code }) => `Boxes: there is a box ${code} already. Leave it out, or type other codes.`,
  'box-not-found': ({ code }) =>
    `Boxes: there is no box ${code}. Add it under Mating boxes first, or correct the code.`,
  'box-holds-a-cell': ({ box, batch, since }, text) =>
    `Boxes: ${box} holds a cell of ${batch} since ${text(since)}. Free it first, or leave it out.`,
  'box-holds-a-queen': ({ box, queen }) =>
    `Boxes: queen ${queen} is in ${box}. Say first on her page where she goes, or leave the box out.`,
  'box-retired': ({ box }) => `Boxes: ${box} was taken out of use. Leave it out.`,
  'more-boxes-than-sealed-cells': ({ boxes, cells: left }) =>
    `Boxes: ${boxes} boxes for ${left === 0 ? 'no' : left} sealed ${left === 1 ? 'cell' : 'cells'} left in this batch. Name fewer boxes, or correct the count of sealed cells.`,
  'emergence-passed': ({ latest }, text) =>
    `Day: the last queens of this batch emerged by ${text(latest)}. Correct the day, or say under “What was seen” what you really found.`,
  'cells-not-ripe': ({ earliest }, text) =>
    `Day: cells cannot be moved before they are sealed, ${text(earliest)} at the earliest. Correct the day.`,
  'look-before-placing': ({ placedOn }, text) =>
    `Day: the cell was put in on ${text(placedOn)}. Type that day or a later one.`,
  'placement-not-found': () => 'This box holds nothing any more. Reload the page.',
  'proposal-outdated': ({ box }) =>
    `${box}: something was typed since this was proposed, so it no longer stands. Look at what is proposed now.`,
  'wrong-number-of-ids': ({ needed }) => `Boxes: ${needed} boxes were named. Try once more.`,
  'queen-number-taken': ({ number }) => `Number: ${number} belongs to another queen. Take the next free number.`,
  'queen-dates-turned-round': ({ firstEggsOn, provedOn }, text) =>
    `Proved on: sealed brood on ${text(provedOn)} cannot lie before the first eggs on ${text(firstEggsOn)}. Correct one of the two.`,
  'no-cells-planned': () => 'No number of cells was planned for this batch. Type the cells given on each bar.',
  'wish-missing': () => 'This wish is no longer in the workbook. Open the plan again.',
  'queen-promised': ({ queen, to }) =>
    `Promised to: ${queen} is promised to ${to} already. Take that promise back first, or choose another queen.`,
  'queen-not-here': ({ queen }) =>
    `Queen ${queen} is not with you any more, so she cannot be promised. Choose a queen that is still with you.`,
  'promise-days-turned-round': ({ promisedOn }, text) =>
    `Wanted by: that day lies before the promise of ${text(promisedOn)}. Correct it, or leave it empty.`,
  'promise-missing': () => 'This promise is no longer in the workbook. Go back to the queen and look again.',
  'queen-missing': () => 'This queen is no longer in the workbook. Go back to the list of queens.',
  'queen-own-ancestor': ({ number }) =>
    `Mother: ${number} descends from this queen, so she cannot be her mother. Choose another one, or leave it open.`,
  'hive-for-queen-needed': () => 'Hive: say which hive she was brought to. Choose one of the list.',
  'queen-moved-before-birth': ({ bornOn }, text) =>
    `Day: she came out of her cell on ${text(bornOn)} at the soonest. Type that day or a later one.`,
  'follow-up-missing': () => 'This check is no longer in the workbook. Reload the page.',
  'answered-before-move': ({ movedOn }, text) =>
    `Day: she was brought there on ${text(movedOn)}. Type that day or a later one.`,
  'out-of-needed': () => 'Out of: type how many cells, bees or days it was counted over.',
  'more-cleared-than-tested': ({ counted, outOf }) =>
    `Counted: ${counted} cleared is more than the ${outOf} tested. Correct one of the two.`,
  'treatment-turned-round': ({ fromOn }, text) =>
    `Until: the treatment began on ${text(fromOn)}. Type that day or a later one, or leave it empty.`,
  'look-missing': () => 'Look: it is not in the workbook any more. Turn to the page again.',
  'feeding-missing': () => 'Feeding: it is not in the workbook any more. Turn to the page again.',
  'nothing-to-feed': ({ code }) =>
    `Hives and boxes: ${code} is no hive and no box in use. Correct the code, or add it first.`,
  'feed-not-named': () => 'What it is: fill in the name of the feed, or choose one of the list.',
  'amount-unreadable': ({ text }) =>
    `How much: “${text}” is no amount. Type a number, or one with its unit, such as 0.5, 500 g or 1.5 L.`,
  'amount-too-large': ({ text }) => `How much: ${text} in one place is more than 100 litres or kilograms. Correct it.`,
  'no-labels': () => 'Labels: no cells of this batch are in boxes. Put cells in boxes first.',
  'file-unreadable': ({ trouble }) => FILE_TROUBLE[trouble.reason](trouble),
  'fields-not-matched': ({ fields }) =>
    `Columns: say which column is ${fields.map((field) => IMPORT_FIELD_WORDS[field]).join(' and which is ')}.`,
  'day-order-needed': () => 'Days: in this file they can be read two ways. Say how they are written.',
  'rows-with-problems': ({ rows, first }) =>
    `File: ${rows === 1 ? '1 row has a problem' : `${rows} rows have problems`}, the first is row ${first}. Correct the file, or leave such rows out.`,
  'nothing-to-take-in': () =>
    'File: no row of it can be taken in. Correct the rows that are named, then try once more.',
  'no-calendar-events': () =>
    'Batches: there is nothing of this choice to put in a calendar. Choose a batch that is planned or running.',
  'start-beyond-sheet': ({ labels }) =>
    `First free label: this sheet has ${labels} labels. Type a number from 1 to ${labels}.`,
  'season-without-batches': ({ season }) => `Season: no batch was started in ${season}. Choose a season with batches.`,
  'nothing-to-label': () => 'Labels: there is nothing of this kind to label yet. Choose another batch or kind.',
  'label-sheet-missing': () => 'Sheet: this label sheet is not in the workbook any more. Choose another.',
  'label-sheet-wrong': ({ field, trouble, millimetres }) =>
    `${ownSheets.fields[field]}: ${SHEET_TROUBLE[trouble](millimetres)}`,
  'printer-reading-wrong': ({ field, trouble, millimetres }) =>
    `${calibrationWords.fields[field]}: ${READING_TROUBLE[trouble](millimetres)}`,
  'qr-does-not-fit': ({ neededMillimetres }) =>
    `Square code: it needs ${neededMillimetres.toFixed(0)} mm, more than this label has. Choose a larger label, or leave the code off.`,
};

/** Something odd that was kept: what, and what to think of. */
export const NOTICES: Sentences<Notice> = {
  'low-take': ({ given, taken }) =>
    `Only ${taken} of ${given} taken. Look for a queen or cells in the builder, and think of giving new larvae as a batch of its own.`,
  'many-cells-for-builder': ({ cells: many, usualMost }) =>
    `${cells(many)} are more than the ${usualMost} one builder usually finishes well. Think of sharing them between two.`,
  'move-during-hands-off': ({ hive, until }, text) =>
    `${hive} was to be left alone until ${text(until)}: its cells bear no jolt. The move is written down all the same.`,
  'two-cells-that-day': ({ box, batch, which }) =>
    which === 'new'
      ? `${box} held two cells that day. This look counts for the new one, of ${batch}.`
      : `${box} held two cells that day. This look counts for the earlier one, of ${batch}; of the new one only “cell” can be seen on its first day.`,
  'look-during-hands-off': ({ box, until }, text) => `${box} was to be left alone until ${text(until)}.`,
  'late-for-mating': ({ box, daysSinceEmergence }) =>
    `${box}: still a virgin ${daysSinceEmergence} days after emergence. Mating is late now; look again in a few days, then decide.`,
  'early-result': ({ box, result, daysSincePlaced }) =>
    `${box}: “${lookWords[result as keyof typeof lookWords]?.name ?? result}” only ${daysSincePlaced} days after the cell was put in is early. Right box?`,
  'box-just-emptied': ({ box, from }, text) =>
    `${box}: its queen was taken out only just now; the bees take a cell better from ${text(from)} on. Destroy their own cells first.`,
  'queen-not-proved': ({ queen }) => `${queen}: no sealed worker brood of hers was seen yet, so she is not proved.`,
  'queen-promised-to-other': ({ queen, to }) => `${queen} was promised to ${to}. Have you another queen for them?`,
  'young-queen': ({ queen, days }) =>
    `${queen} is ${days} days out of her cell. Queens that leave their box before day 21 live less often to the next season.`,
  'hive-has-queen': ({ hive, queen }) =>
    `${hive} has ${queen} as its queen by the register. Is she out? Say what became of her on her page.`,
  'builder-resting': ({ builder, until }, text) =>
    `${builder} has just given up cells and should rest until ${text(until)}.`,
  'feed-job-done': ({ batch }) => `${batch}: “${STEP_TITLES['feed-start']}” is marked as done.`,
  'emergence-near': ({ earliest }, text) =>
    `The first queen may come out on ${text(earliest)}. Look for holes before you hand out the rest.`,
  'look-before-emergence': ({ step, earliest }, text) =>
    `No queen of this batch can be out before ${text(earliest)}, but ${title(step)} is marked earlier. Kept as typed; right day, right batch?`,
  'day-in-future': ({ day }, text) => `${text(day)} is still to come. Kept as typed.`,
};
