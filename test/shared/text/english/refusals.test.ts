import { expect, test } from 'vitest';
import type { Notice, Refusal } from '../../../../shared/contract/refusal.ts';
import { shortDay } from '../../../../shared/text/day-text.ts';
import { noticeSentence, refusalSentence } from '../../../../shared/text/english/refusals.ts';

const refusals: readonly Refusal[] = [
  { kind: 'more-taken-than-given', field: 'taken', given: 12, taken: 15 },
  { kind: 'builder-in-use', field: 'builderId', builder: 'H12', batch: '26-01', until: '2026-05-14' },
  { kind: 'box-holds-a-cell', field: 'boxes', box: 'K03', batch: '26-01', since: '2026-05-14' },
  { kind: 'emergence-passed', field: 'placedOn', latest: '2026-05-17' },
  { kind: 'day-before-start', field: 'countedOn', day: '2026-05-01', start: '2026-05-04' },
  { kind: 'not-a-workbook', field: 'file', file: '/home/a/photo.jpg' },
  { kind: 'workbook-newer', field: 'file', file: '/a.ripecell', version: 99 },
  { kind: 'workbook-open-elsewhere', field: 'file', file: '/a.ripecell' },
  { kind: 'not-valid', field: 'cellsPlanned', expected: 'number' },
  { kind: 'larva-age-turned-round', field: 'larvaAgeHours', from: 30, to: 10 },
  { kind: 'not-saved', reason: 'disk-full' },
];

test.each(refusals.map((refusal) => [refusal.kind, refusal] as const))(
  '%s is said in a sentence with a remedy',
  (_kind, refusal) => {
    const sentence = refusalSentence(refusal, shortDay);
    expect(sentence).toMatch(/^[A-Z].*[.]$/);
    expect(sentence).not.toMatch(/undefined|\[object|NaN|\d{4}-\d{2}-\d{2}/);
    expect(sentence.split(/[.:;]/).filter((part) => part.trim()).length).toBeGreaterThan(1);
  },
);

test('a sentence names the field, the figures and the day in words', () => {
  expect(refusalSentence(refusals[0] as Refusal, shortDay)).toBe(
    'Taken: 15 cells taken is more than the 12 given. Correct one of the two.',
  );
  expect(refusalSentence(refusals[1] as Refusal, shortDay)).toContain('H12 holds the cells of 26-01 until Thu 14 May');
});

test('a notice says what is odd and what to think of', () => {
  const notice: Notice = { kind: 'early-result', box: 'K01', result: 'proved', daysSincePlaced: 5 };
  expect(noticeSentence(notice, shortDay)).toBe(
    'K01: “proved” only 5 days after the cell was put in is early. Right box?',
  );
});
