import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { ChangeWords } from '../../../../shared/model/journal.ts';
import { STEPS } from '../../../../shared/model/step.ts';
import { english } from '../../../../shared/text/english/english.ts';
import { ROW_WORDS } from '../../../../shared/text/english/history.ts';
import { changeSentence, fieldName, fieldValue, rowName, stepSentence } from '../../../../shared/text/sentences.ts';

const batch = '26-07';
/** One of each kind; a kind left out does not compile. */
const ONE_OF_EACH: { readonly [Did in ChangeWords['did']]: readonly [ChangeWords, string] } = {
  'start-batch': [{ did: 'start-batch', batch }, 'Start batch 26-07'],
  'edit-batch': [{ did: 'edit-batch', batch }, 'Notes on 26-07'],
  'close-batch': [{ did: 'close-batch', batch }, 'Close 26-07'],
  'reopen-batch': [{ did: 'reopen-batch', batch }, 'Open 26-07 again'],
  'remove-batch': [{ did: 'remove-batch', batch, queens: 0, hives: ['H12'] }, 'Batch 26-07 taken out with hive H12'],
  'print-labels': [{ did: 'print-labels', batch }, 'Labels of 26-07 noted as printed'],
  'print-paper': [
    { did: 'print-paper', paper: 'inspector-pages', name: null, year: 2026 },
    'Pages for an inspector, all yards, 2026 noted as printed',
  ],
  'print-yard-sheet': [{ did: 'print-yard-sheet', on: '2026-05-15' }, 'Yard sheet for Fri 15 May noted as printed'],
  'add-bar': [{ did: 'add-bar', batch, bar: 3 }, 'Add bar 3 to 26-07'],
  'record-bar-counts': [{ did: 'record-bar-counts', batch, bar: 2 }, 'Counts of 26-07, bar 2'],
  'mark-step': [{ did: 'mark-step', batch, step: 'give-larvae' }, '26-07, “Give the larvae” done'],
  'unmark-step': [{ did: 'unmark-step', batch, step: 'give-larvae' }, '26-07, “Give the larvae” open again'],
  'move-step': [{ did: 'move-step', batch, step: 'give-larvae' }, '26-07, “Give the larvae” moved'],
  'record-loss': [
    { did: 'record-loss', batch, stage: 'emerged', reason: 'chilled', cells: 3 },
    '26-07, not emerged: chilled 3',
  ],
  'drop-step': [{ did: 'drop-step', batch, step: 'count-sealed' }, '26-07, “Count the sealed cells” will not be done'],
  'take-up-step': [
    { did: 'take-up-step', batch, step: 'count-sealed' },
    '26-07, “Count the sealed cells” taken up again',
  ],
  'set-warmth': [{ did: 'set-warmth', batch, celsius: 33.5 }, 'Sealed cells of 26-07 at 33.5 °C'],
  'save-weather': [{ did: 'save-weather', on: '2026-05-14' }, 'Weather of Thu 14 May'],
  'give-as-planned': [{ did: 'give-as-planned', batch }, 'Cells of 26-07 given as planned'],
  'save-wish': [{ did: 'save-wish', forWhom: 'the club' }, 'Wish of the club'],
  'remove-wish': [{ did: 'remove-wish', forWhom: null }, 'Wish for own hives taken out'],
  'record-observation': [{ did: 'record-observation', batch, what: 'cells-sealed' }, '26-07, cells sealed'],
  'remove-observation': [
    { did: 'remove-observation', batch, what: 'cells-sealed' },
    '26-07, not seen after all: cells sealed',
  ],
  'add-boxes': [{ did: 'add-boxes', boxes: 'K01-K18' }, 'Add boxes K01-K18'],
  'place-cells': [{ did: 'place-cells', batch, boxes: 'K01-K09' }, 'Cells of 26-07 into K01-K09'],
  'take-errand': [{ did: 'take-errand', from: 'Orchard', looks: 2 }, 'Take in 2 looks from “Orchard”'],
  'record-look': [{ did: 'record-look', box: 'K07', result: 'laying', queen: null }, 'K07 laying'],
  'remove-look': [{ did: 'remove-look', box: 'K07', on: '2026-05-28' }, 'K07, look of Thu 28 May taken out'],
  'end-placement': [{ did: 'end-placement', box: 'K07', reason: 'caught' }, 'K07 freed, queen caught'],
  'retire-box': [{ did: 'retire-box', box: 'K07' }, 'K07 taken out of use'],
  'save-yard': [{ did: 'save-yard', yard: 'Orchard' }, 'Yard Orchard'],
  'save-hive': [{ did: 'save-hive', hive: 'H12' }, 'Hive H12'],
  'record-score': [{ did: 'record-score', hive: 'H12' }, 'Score of H12'],
  'record-test': [{ did: 'record-test', hive: 'H12' }, 'Test of H12'],
  'record-treatment': [{ did: 'record-treatment', hive: 'H12' }, 'Treatment of H12'],
  'move-hive': [{ did: 'move-hive', hive: 'H12' }, 'Hive H12 moved'],
  'set-roles': [{ did: 'set-roles', hive: 'H12', season: 2026 }, 'Role of H12 in 2026'],
  'record-hive-look': [{ did: 'record-hive-look', hive: 'H12', on: '2026-05-04' }, 'Look into H12'],
  'remove-hive-look': [{ did: 'remove-hive-look', hive: 'H12', on: '2026-05-04' }, 'H12, look of Mon 4 May taken out'],
  'record-feeding': [{ did: 'record-feeding', places: 'K01–K08', on: '2026-05-04' }, 'Fed on Mon 4 May: K01–K08'],
  'remove-feeding': [{ did: 'remove-feeding', places: 'H12', on: '2026-05-04' }, 'Not fed on Mon 4 May after all: H12'],
  'save-queen': [{ did: 'save-queen', queen: '26-041' }, 'Queen 26-041'],
  'promise-queen': [{ did: 'promise-queen', queen: '26-004', to: 'Ines' }, 'Queen 26-004 promised to Ines'],
  'take-back-promise': [
    { did: 'take-back-promise', queen: '26-004', to: 'Ines' },
    'Promise of queen 26-004 to Ines taken back',
  ],
  'record-feedback': [{ did: 'record-feedback', queen: '26-041' }, 'What was told of queen 26-041'],
  'move-queen': [{ did: 'move-queen', queen: '26-041', place: 'sold' }, 'Queen 26-041 sold'],
  'save-box': [{ did: 'save-box', box: 'K07' }, 'Particulars of K07'],
  'plan-look': [{ did: 'plan-look', box: 'K07' }, 'Another look into K07 planned'],
  'answer-follow-up': [{ did: 'answer-follow-up', what: 'check-eggs', who: '26-041' }, 'Look for eggs 26-041'],
  'save-method-copy': [{ did: 'save-method-copy', method: 'Mine' }, 'Method Mine'],
  'save-settings': [{ did: 'save-settings' }, 'Settings'],
  'take-in-table': [{ did: 'take-in-table', what: 'counts', rows: 12 }, 'Table taken in, 12 batches'],
  'take-in-workbook': [
    { did: 'take-in-workbook', name: 'Queens 2026' },
    'File of everything of “Queens 2026” taken in',
  ],
  'begin-workbook': [{ did: 'begin-workbook' }, 'The workbook was begun'],
  'build-demo': [{ did: 'build-demo' }, 'The invented yard was set up'],
  other: [{ did: 'other' }, 'A change'],
};

test.each(Object.values(ONE_OF_EACH))('%o reads “%s”', (words, sentence) => {
  expect(changeSentence(english, words)).toBe(sentence);
});

test('a queen’s number stands with the look that gave it, and an undo says what it took back', () => {
  const words = { did: 'record-look', box: 'K07', result: 'laying', queen: '26-041' } as const;
  expect(changeSentence(english, words)).toBe('K07 laying, queen 26-041');
  expect(stepSentence(english, { kind: 'change', words })).toBe('K07 laying, queen 26-041');
  expect(stepSentence(english, { kind: 'undo', words })).toBe('Undone: K07 laying, queen 26-041');
  expect(stepSentence(english, { kind: 'redo', words })).toBe('Done again: K07 laying, queen 26-041');
});

test('a batch that is taken out says how many queens stay', () => {
  const said = (queens: number) => changeSentence(english, { did: 'remove-batch', batch, queens });
  expect(said(1)).toBe('Batch 26-07 taken out, 1 queen stays');
  expect(said(2)).toBe('Batch 26-07 taken out, 2 queens stay');
});

test('a kind of change that only a later program knows is still a line', () => {
  expect(changeSentence(english, { did: 'fly-to-the-moon' } as never)).toBe('A change');
});

describe('rows and fields', () => {
  const columns = readFileSync(new URL('../../../golden/workbook-columns.txt', import.meta.url), 'utf8')
    .split('\n')
    .map((line) => line.split(' ')[0]?.split('.') ?? []);

  test.each(Object.entries(ROW_WORDS))(
    '%s: every column but the id has a name, and no name is idle',
    (table, words) => {
      const there = columns.filter(([of, column]) => of === table && column !== 'id').map(([, column]) => column);
      expect(there.length).toBeGreaterThan(0);
      expect(Object.keys(words.fields).toSorted()).toEqual(there.toSorted());
    },
  );

  test('without words of their own are still spelled plainly', () => {
    expect(rowName(english, 'feeding_note')).toBe('Feeding note');
    expect(fieldName(english, 'feeding_note', 'colony_id')).toBe('Colony');
  });

  test.each([
    ['box_look', 'result', 'drone-layer', 'drone-layer'],
    ['box_look', 'result', 'none', 'no queen'],
    ['observation', 'what', 'cells-browned', 'cell tips browned'],
    ['batch', 'method', 'larva-grafting', 'Larva grafting'],
    ['batch', 'practice', 1, 'yes'],
    ['batch', 'comb', 'drawn', 'drawn comb'],
    ['batch', 'builder_type', 'queenless', 'queenless throughout'],
    ['mating_box', 'box_type', 'mini', 'mini box'],
    ['placement', 'end_reason', 'united', 'united'],
    ['colony_role', 'role', 'drone-mother', 'drone mother'],
    ['queen', 'place', 'caged', 'in a cage'],
    ['queen_move', 'way', 'candy-cage', 'candy cage'],
    ['queen_feedback', 'outcome', 'lays-well', 'lays well'],
    ['stock_score', 'trait', 'calmness', 'Calmness on the comb'],
    ['stock_test', 'kind', 'pin-test', 'Pin test'],
    ['follow_up', 'what', 'check-eggs', 'Look for eggs'],
    ['follow_up', 'answer', 'not-yet', 'not yet'],
    ['colony', 'place', 'row 2', 'row 2'],
    ['count', 'cells', 0, '0'],
    ['count', 'cells', null, 'nothing'],
    ['placement', 'placed_on', '2026-05-14', 'Thu 14 May'],
    ['batch', 'note', '2026-05-14', '2026-05-14'],
  ] as const)('%s.%s %s is said as “%s”', (table, field, value, said) => {
    expect(fieldValue(english, table, field, value, 'day-first')).toBe(said);
  });

  test('a day follows the order a person wants', () => {
    expect(fieldValue(english, 'count', 'counted_on', '2026-05-14', 'month-first')).toBe('Thu May 14');
  });

  test('every step of the timetable is called by its title', () => {
    for (const step of STEPS) expect(fieldValue(english, 'step_done', 'step', step, 'day-first')).not.toBe(step);
  });
});
