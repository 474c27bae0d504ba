import { expect, test } from 'vitest';
import { differingSteps, methodCopy, typedDays } from '../../../../renderer/features/settings/method-form.ts';
import type { MethodStep, MethodView } from '../../../../shared/contract/methods.ts';

const aStep = (changes: Partial<MethodStep> = {}): MethodStep => ({
  step: 'count-taken',
  kind: 'job',
  builtIn: { earliest: 1, expected: 1, latest: 2 },
  own: { earliest: 1, expected: 1, latest: 2 },
  changed: false,
  source: 'common practice, no source',
  words: { title: null, note: null },
  ...changes,
});
const view = (steps: readonly MethodStep[]): MethodView => ({
  method: 'larva-grafting',
  copy: null,
  steps,
  copies: [],
});

test('a copy holds only what differs: days, a name, or a note', () => {
  const steps = [aStep(), aStep({ step: 'count-sealed' }), aStep({ step: 'first-look' }), aStep({ step: 'set-out' })];
  const typed = typedDays(steps);
  const changed = {
    ...typed,
    'count-sealed': { ...typed['count-sealed'], expected: '2' },
    'first-look': { ...typed['first-look'], title: ' Eggs? ' },
    'set-out': { ...typed['set-out'], note: 'After rain only.' },
  } as typeof typed;
  expect(methodCopy(view(steps), changed, 'Mine', 'own')?.changes).toEqual([
    { step: 'count-sealed', earliestDay: 1, expectedDay: 2, latestDay: 2, title: null, note: null },
    { step: 'first-look', earliestDay: null, expectedDay: null, latestDay: null, title: 'Eggs?', note: null },
    { step: 'set-out', earliestDay: null, expectedDay: null, latestDay: null, title: null, note: 'After rain only.' },
  ]);
});

test('no copy is made while a day is no number', () => {
  const typed = typedDays([aStep()]);
  const wrong = { 'count-taken': { ...typed['count-taken'], latest: 'soon' } } as typeof typed;
  expect(methodCopy(view([aStep()]), wrong, 'Mine', 'own')).toBeNull();
});

test('names the steps that are not as built in', () => {
  const named = aStep({ step: 'first-look', words: { title: 'Eggs?', note: null } });
  const noted = aStep({ step: 'set-out', words: { title: null, note: 'After rain only.' } });
  const moved = aStep({ step: 'count-sealed', changed: true });
  expect(differingSteps([aStep(), named, noted, moved])).toEqual([named, noted, moved]);
});
