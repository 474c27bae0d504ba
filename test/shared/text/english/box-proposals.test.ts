import { expect, test } from 'vitest';
import type { ProposalReason } from '../../../../shared/model/box-proposal.ts';
import { shortDay } from '../../../../shared/text/day-text.ts';
import { english } from '../../../../shared/text/english/english.ts';
import { proposalReason } from '../../../../shared/text/sentences.ts';

const on = '2026-06-10';
/** One of each kind; a kind left out does not compile. */
const ONE_OF_EACH: { readonly [Kind in ProposalReason['kind']]: Extract<ProposalReason<string>, { kind: Kind }> } = {
  proved: { kind: 'proved', on, age: 23 },
  'bees-gone': { kind: 'bees-gone', on },
  'drone-layer': { kind: 'drone-layer', on },
  'no-queen': { kind: 'no-queen', looks: 2, on },
  'may-be-missed': { kind: 'may-be-missed', on },
  'cell-failed': { kind: 'cell-failed', on },
  'cell-closed': { kind: 'cell-closed', on, age: 5 },
  'no-eggs-yet': { kind: 'no-eggs-yet', on, age: 14 },
  late: { kind: 'late', age: 22 },
  'given-up': { kind: 'given-up', age: 29 },
  'never-looked': { kind: 'never-looked', age: 30 },
  'laying-workers': { kind: 'laying-workers', broodlessDays: 24 },
  weak: { kind: 'weak', strength: 2 },
  'cells-coming': { kind: 'cells-coming', batch: '26-03', on },
  'no-cells-coming': { kind: 'no-cells-coming' },
};

test.each(Object.values(ONE_OF_EACH).map((reason) => [reason.kind, reason] as const))(
  'the reason %s is a sentence with its day in words',
  (kind, reason) => {
    const sentence = proposalReason(english, reason, shortDay);
    expect(sentence).toMatch(/^[A-Z].*\.$/);
    expect(sentence).not.toMatch(/undefined|NaN|\d{4}-\d{2}-\d{2}/);
    if ('on' in reason) expect(sentence).toContain('Wed 10 Jun');
    if ('age' in reason && kind !== 'cell-closed' && kind !== 'late') expect(sentence).toContain(String(reason.age));
  },
);

test('one look without a queen is said in the singular', () => {
  expect(proposalReason(english, { kind: 'no-queen', looks: 1, on }, shortDay)).toBe('No queen on Wed 10 Jun.');
  expect(proposalReason(english, ONE_OF_EACH['no-queen'], shortDay)).toBe(
    'No queen 2 looks running, last on Wed 10 Jun.',
  );
});
