import { expect, test } from 'vitest';
import type { Notice, Refusal } from '../../../../shared/contract/refusal.ts';
import { isIsoDay } from '../../../../shared/kernel/day.ts';
import type { CalendarRefusal } from '../../../../shared/model/timetable.ts';
import { shortDay } from '../../../../shared/text/day-text.ts';
import { english } from '../../../../shared/text/english/english.ts';
import { noticeSentence, refusalSentence } from '../../../../shared/text/sentences.ts';

/** One of each kind, except the calendar's own, which stand in calendar-refusals.test.ts. A kind left out does not compile. */
type Own = Exclude<Refusal, CalendarRefusal>;
const ONE_OF_EACH: { readonly [Kind in Own['kind']]: Extract<Own, { kind: Kind }> } = {
  'errand-unreadable': { kind: 'errand-unreadable', field: 'file', reason: 'not-an-errand' },
  'errand-not-decided': { kind: 'errand-not-decided', field: 'choices', box: 'K07', on: '2026-06-01' },
  'no-box-for-errand': { kind: 'no-box-for-errand', field: 'boxes' },
  'no-workbook-open': { kind: 'no-workbook-open' },
  'not-saved': { kind: 'not-saved', reason: 'disk-full' },
  'not-valid': { kind: 'not-valid', field: 'cellsPlanned', expected: 'number' },
  'file-not-found': { kind: 'file-not-found', field: 'file', file: '/a.ripecell' },
  'drive-refused': { kind: 'drive-refused', field: 'file', file: '/a.ripecell', reason: 'disk-full' },
  'folder-not-found': { kind: 'folder-not-found', field: 'folder', folder: '/bees' },
  'file-exists': { kind: 'file-exists', field: 'name', file: '/a.ripecell' },
  'not-a-workbook': { kind: 'not-a-workbook', field: 'file', file: '/home/a/photo.jpg' },
  'workbook-newer': { kind: 'workbook-newer', field: 'file', file: '/a.ripecell', version: 99 },
  'package-broken': { kind: 'package-broken', field: 'file', file: '/a to move.zip' },
  'not-practice': { kind: 'not-practice' },
  'workbook-damaged': { kind: 'workbook-damaged', field: 'file', file: '/a.ripecell' },
  'workbook-open-elsewhere': { kind: 'workbook-open-elsewhere', field: 'file', file: '/a.ripecell' },
  'place-not-writable': { kind: 'place-not-writable', field: 'folder', folder: '/bees' },
  'file-not-readable': { kind: 'file-not-readable', field: 'file', file: '/a.ripecell' },
  'no-workbook-to-copy': { kind: 'no-workbook-to-copy' },
  'copy-not-made': { kind: 'copy-not-made', reason: 'disk-full' },
  'copy-not-found': { kind: 'copy-not-found', field: 'copy' },
  'copy-not-sound': { kind: 'copy-not-sound', field: 'copy', file: '/copies/a.ripecell' },
  'second-place-same': { kind: 'second-place-same', field: 'folder', folder: '/bees' },
  'look-missing': { kind: 'look-missing' },
  'feeding-missing': { kind: 'feeding-missing' },
  'nothing-to-feed': { kind: 'nothing-to-feed', field: 'places', code: 'K99' },
  'feed-not-named': { kind: 'feed-not-named', field: 'ownFeed' },
  'amount-unreadable': { kind: 'amount-unreadable', field: 'amount', text: 'plenty' },
  'amount-too-large': { kind: 'amount-too-large', field: 'amount', text: '2000' },
  'nothing-to-undo': { kind: 'nothing-to-undo' },
  'nothing-to-redo': { kind: 'nothing-to-redo' },
  'changed-since': { kind: 'changed-since', way: 'undo', words: { did: 'retire-box', box: 'K07' } },
  'batch-not-found': { kind: 'batch-not-found' },
  'batch-code-taken': { kind: 'batch-code-taken', field: 'code', code: '26-01' },
  'more-taken-than-given': { kind: 'more-taken-than-given', field: 'taken', given: 12, taken: 15 },
  'more-sealed-than-taken': { kind: 'more-sealed-than-taken', field: 'sealed', taken: 9, sealed: 10 },
  'more-sealed-than-left': { kind: 'more-sealed-than-left', field: 'sealed', given: 12, removed: 3, sealed: 10 },
  'more-sealed-than-given': { kind: 'more-sealed-than-given', field: 'sealed', given: 12, sealed: 13 },
  'more-removed-than-taken': { kind: 'more-removed-than-taken', field: 'removed', taken: 4, removed: 5 },
  'more-placed-than-sealed': { kind: 'more-placed-than-sealed', field: 'sealed', placed: 6, sealed: 5 },
  'day-before-start': { kind: 'day-before-start', field: 'countedOn', day: '2026-05-01', start: '2026-05-04' },
  'comb-needed': { kind: 'comb-needed', field: 'comb' },
  'builder-in-use': {
    kind: 'builder-in-use',
    field: 'builderId',
    builder: 'H12',
    batch: '26-01',
    until: '2026-05-14',
  },
  'hive-code-taken': { kind: 'hive-code-taken', field: 'newBreeder', code: 'H12' },
  'hive-not-found': { kind: 'hive-not-found', field: 'breederId' },
  'bar-not-found': { kind: 'bar-not-found' },
  'step-not-in-timetable': { kind: 'step-not-in-timetable', field: 'step', step: 'cage-queen' },
  'step-already-done': { kind: 'step-already-done', field: 'step', step: 'count-taken' },
  'nothing-lost': { kind: 'nothing-lost', field: 'cells', stage: 'emerged' },
  'more-reasons-than-lost': { kind: 'more-reasons-than-lost', field: 'cells', lost: 4, explained: 6 },
  'step-needed': { kind: 'step-needed', field: 'step', step: 'place-cells' },
  'move-past-window': { kind: 'move-past-window', field: 'movedTo', earliest: '2026-05-07', latest: '2026-05-10' },
  'observation-not-found': { kind: 'observation-not-found' },
  'method-name-in-use': { kind: 'method-name-in-use', field: 'name', name: 'Early grafting' },
  'hive-code-in-use': { kind: 'hive-code-in-use', field: 'code', code: 'H12' },
  'yard-name-in-use': { kind: 'yard-name-in-use', field: 'name', name: 'Orchard' },
  'yard-not-found': { kind: 'yard-not-found', field: 'yardId' },
  'hive-missing': { kind: 'hive-missing', field: 'colonyId' },
  'box-codes-unreadable': { kind: 'box-codes-unreadable', field: 'codes', text: 'K03-K01' },
  'box-code-taken': { kind: 'box-code-taken', field: 'codes', code: 'K02' },
  'box-not-found': { kind: 'box-not-found', field: 'boxes', code: 'K99' },
  'box-holds-a-queen': { kind: 'box-holds-a-queen', field: 'boxes', box: 'K03', queen: '26-041' },
  'box-holds-a-cell': { kind: 'box-holds-a-cell', field: 'boxes', box: 'K03', batch: '26-01', since: '2026-05-14' },
  'box-retired': { kind: 'box-retired', field: 'boxes', box: 'K10' },
  'more-boxes-than-sealed-cells': { kind: 'more-boxes-than-sealed-cells', field: 'boxes', boxes: 3, cells: 2 },
  'emergence-passed': { kind: 'emergence-passed', field: 'placedOn', latest: '2026-05-17' },
  'cells-not-ripe': { kind: 'cells-not-ripe', field: 'placedOn', earliest: '2026-05-09' },
  'look-before-placing': { kind: 'look-before-placing', field: 'lookedOn', placedOn: '2026-05-14' },
  'placement-not-found': { kind: 'placement-not-found' },
  'proposal-outdated': { kind: 'proposal-outdated', box: 'K03' },
  'file-unreadable': { kind: 'file-unreadable', field: 'file', trouble: { reason: 'too-many-rows', limit: 20_000 } },
  'fields-not-matched': { kind: 'fields-not-matched', field: 'columns', fields: ['number', 'bornIn'] },
  'day-order-needed': { kind: 'day-order-needed', field: 'dayOrder' },
  'rows-with-problems': { kind: 'rows-with-problems', field: 'file', rows: 3, first: 7 },
  'nothing-to-take-in': { kind: 'nothing-to-take-in', field: 'file' },
  'no-calendar-events': { kind: 'no-calendar-events', field: 'batchId' },
  'wrong-number-of-ids': { kind: 'wrong-number-of-ids', needed: 3 },
  'queen-number-taken': { kind: 'queen-number-taken', field: 'number', number: '26-001' },
  'queen-dates-turned-round': {
    kind: 'queen-dates-turned-round',
    field: 'provedOn',
    firstEggsOn: '2026-06-10',
    provedOn: '2026-06-01',
  },
  'result-key-twice': {
    kind: 'result-key-twice',
    field: 'resultLetters',
    key: 'L',
    results: ['laying', 'virgin'],
  },
  'writer-not-listed': { kind: 'writer-not-listed', field: 'writer', name: 'Maria' },
  'no-cells-planned': { kind: 'no-cells-planned' },
  'wish-missing': { kind: 'wish-missing', field: 'wishId' },
  'queen-promised': { kind: 'queen-promised', field: 'promisedTo', queen: '26-004', to: 'Ines' },
  'queen-not-here': { kind: 'queen-not-here', queen: '26-004' },
  'promise-days-turned-round': { kind: 'promise-days-turned-round', field: 'wantedOn', promisedOn: '2026-06-02' },
  'promise-missing': { kind: 'promise-missing' },
  'queen-missing': { kind: 'queen-missing' },
  'queen-own-ancestor': { kind: 'queen-own-ancestor', field: 'motherId', number: '25-003' },
  'hive-for-queen-needed': { kind: 'hive-for-queen-needed', field: 'colonyId' },
  'queen-moved-before-birth': { kind: 'queen-moved-before-birth', field: 'movedOn', bornOn: '2026-05-16' },
  'follow-up-missing': { kind: 'follow-up-missing' },
  'answered-before-move': { kind: 'answered-before-move', field: 'doneOn', movedOn: '2026-06-10' },
  'out-of-needed': { kind: 'out-of-needed', field: 'outOf' },
  'more-cleared-than-tested': { kind: 'more-cleared-than-tested', field: 'counted', counted: 52, outOf: 50 },
  'treatment-turned-round': { kind: 'treatment-turned-round', field: 'toOn', fromOn: '2026-08-01' },
  'no-labels': { kind: 'no-labels', field: 'batchId' },
  'start-beyond-sheet': { kind: 'start-beyond-sheet', field: 'startAt', labels: 21 },
  'season-without-batches': { kind: 'season-without-batches', field: 'season', season: 2024 },
  'nothing-to-label': { kind: 'nothing-to-label', field: 'kind' },
  'label-sheet-missing': { kind: 'label-sheet-missing', field: 'sheet' },
  'label-sheet-wrong': { kind: 'label-sheet-wrong', field: 'pitchX', trouble: 'overlap', millimetres: 1.5 },
  'printer-reading-wrong': {
    kind: 'printer-reading-wrong',
    field: 'barAcross',
    trouble: 'scaled',
    millimetres: 96.5,
  },
  'qr-does-not-fit': { kind: 'qr-does-not-fit', field: 'qr', neededMillimetres: 18.2 },
};

test.each(Object.values(ONE_OF_EACH).map((refusal) => [refusal.kind, refusal] as const))(
  '%s is said in a sentence with a remedy',
  (_kind, refusal) => {
    const sentence = refusalSentence(english, refusal, shortDay);
    expect(sentence).toMatch(/^[A-Z“].*[.]$/);
    expect(sentence).not.toMatch(/undefined|\[object|NaN|\d{4}-\d{2}-\d{2}/);
    expect(sentence.split(/[.:;]/).filter((part) => part.trim()).length).toBeGreaterThan(1);
  },
);

test('a sentence names the field, the figures and the day in words', () => {
  expect(refusalSentence(english, ONE_OF_EACH['more-taken-than-given'], shortDay)).toBe(
    'Taken: 15 cells taken is more than the 12 given. Correct one of the two.',
  );
  expect(refusalSentence(english, ONE_OF_EACH['builder-in-use'], shortDay)).toContain(
    'H12 holds the cells of 26-01 until Thu 14 May',
  );
});

test.each(['disk-full', 'drive-error', 'read-only', 'file-replaced'] as const)(
  'not saved, %s: says so first',
  (reason) => {
    expect(refusalSentence(english, { kind: 'not-saved', reason }, shortDay)).toMatch(/^Not saved: .+[.] [A-Z].+[.]$/);
  },
);

test.each(['disk-full', 'drive-error'] as const)('a drive that refuses a file, %s: nothing was changed', (reason) => {
  const sentence = refusalSentence(
    english,
    { kind: 'drive-refused', field: 'file', file: '/a.ripecell', reason },
    shortDay,
  );
  expect(sentence).toMatch(/^File: .*\/a\.ripecell.* Nothing in it was changed\. [A-Z].+\.$/);
});

test.each(['disk-full', 'drive-error', 'read-only'] as const)('no copy made, %s: says what is as it was', (reason) => {
  const sentence = refusalSentence(english, { kind: 'copy-not-made', reason }, shortDay);
  expect(sentence).toMatch(/^No copy was made: .+[.] Your workbook .* as (it|they) (was|were)[.] [A-Z].+[.]$/);
});

test('a value that does not fit names its field by the word on screen', () => {
  const wrong = (field: string, expected: 'number' | 'day' | 'text' | 'choice') =>
    refusalSentence(english, { kind: 'not-valid', field, expected }, shortDay);
  expect(wrong('cellsPlanned', 'number')).toBe('Cells: Type a whole number.');
  expect(wrong('counts.0.taken', 'number')).toMatch(/^Taken: /);
  expect(wrong('placedOn', 'day')).toMatch(/^Day: Type a day/);
  expect(wrong('anythingElse', 'choice')).toMatch(/^This field: /);
});

/** One of each kind; a kind left out does not compile. */
const NOTICES: { readonly [Kind in Notice['kind']]: Extract<Notice, { kind: Kind }> } = {
  'low-take': { kind: 'low-take', field: 'taken', given: 12, taken: 3 },
  'many-cells-for-builder': { kind: 'many-cells-for-builder', cells: 40, usualMost: 20 },
  'move-during-hands-off': { kind: 'move-during-hands-off', hive: 'H12', until: '2026-05-12' },
  'two-cells-that-day': { kind: 'two-cells-that-day', box: 'K01', batch: '26-01', which: 'earlier' },
  'look-during-hands-off': { kind: 'look-during-hands-off', box: 'K01', until: '2026-05-26' },
  'late-for-mating': { kind: 'late-for-mating', box: 'K01', daysSinceEmergence: 23 },
  'early-result': { kind: 'early-result', box: 'K01', result: 'proved', daysSincePlaced: 5 },
  'box-just-emptied': { kind: 'box-just-emptied', box: 'K01', from: '2026-06-10' },
  'queen-not-proved': { kind: 'queen-not-proved', queen: '26-004' },
  'queen-promised-to-other': { kind: 'queen-promised-to-other', queen: '26-004', to: 'Ines' },
  'young-queen': { kind: 'young-queen', queen: '26-004', days: 17 },
  'hive-has-queen': { kind: 'hive-has-queen', hive: 'H12', queen: '25-002' },
  'builder-resting': { kind: 'builder-resting', builder: 'H12', until: '2026-05-19' },
  'feed-job-done': { kind: 'feed-job-done', batch: '26-09' },
  'emergence-near': { kind: 'emergence-near', earliest: '2026-05-15' },
  'look-before-emergence': { kind: 'look-before-emergence', step: 'first-look', earliest: '2026-05-15' },
  'day-in-future': { kind: 'day-in-future', field: 'countedOn', day: '2026-05-14' },
};

test.each(Object.values(NOTICES).map((notice) => [notice.kind, notice] as const))(
  'the notice %s names what it is about, in words',
  (_kind, notice) => {
    const sentence = noticeSentence(english, notice, shortDay);
    expect(sentence).toMatch(/^[A-Z0-9].*[.?]$/);
    expect(sentence).not.toMatch(/undefined|\[object|NaN|\d{4}-\d{2}-\d{2}/);
    for (const [name, fact] of Object.entries(notice)) {
      if (['kind', 'field', 'result', 'step'].includes(name)) continue;
      expect(sentence).toContain(isIsoDay(String(fact)) ? shortDay(String(fact)) : String(fact));
    }
  },
);

test('a notice says what is odd and what to think of', () => {
  expect(noticeSentence(english, NOTICES['early-result'], shortDay)).toBe(
    'K01: “proved” only 5 days after the cell was put in is early. Right box?',
  );
});
