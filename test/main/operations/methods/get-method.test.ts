import { expect, test } from 'vitest';
import { getMethod } from '../../../../main/operations/methods/get-method.ts';
import { saveMethodCopy } from '../../../../main/operations/methods/save-method-copy.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';

test('shows a method in days after the larvae are given, each with its source', () => {
  const view = getMethod(aDesk(), { method: 'larva-grafting', comb: null, copyId: null });
  // Cells moved on day 10, first look on day 24 [Büchler et al. 2013, COLOSS BEEBOOK 2.1.3.4 and 2.2.2].
  const days = Object.fromEntries(view.steps.map((step) => [step.step, step.builtIn.expected]));
  expect(days).toMatchObject({
    'give-larvae': 0,
    'count-taken': 1,
    'place-cells': 10,
    emergence: 12,
    'first-look': 24,
  });
  expect(view.steps.every((step) => step.source !== '' && !step.changed)).toBe(true);
});

test('shows a copy beside its origin, and what differs', () => {
  const desk = aDesk();
  const change = {
    step: 'count-taken',
    earliestDay: 2,
    expectedDay: 2,
    latestDay: 3,
    title: null,
    note: null,
  } as const;
  mustOk(saveMethodCopy(desk, { id: 'own', origin: 'larva-grafting', name: 'Mine', changes: [change] }));
  const view = getMethod(desk, { method: 'flat-comb', comb: null, copyId: 'own' });
  expect(view.method).toBe('larva-grafting');
  expect(
    view.steps.filter((step) => step.changed).map(({ step, builtIn, own }) => [step, builtIn.expected, own.expected]),
  ).toEqual([['count-taken', 1, 2]]);
  expect(view.copies.map((copy) => copy.name)).toEqual(['Mine']);
});
