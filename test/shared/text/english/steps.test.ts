import { describe, expect, it } from 'vitest';
import { BUILDER_TYPES, METHODS } from '../../../../shared/model/method.ts';
import { STEPS } from '../../../../shared/model/step.ts';
import { english } from '../../../../shared/text/english/english.ts';
import { STEP_TITLES } from '../../../../shared/text/english/step-titles.ts';
import { stepWords } from '../../../../shared/text/sentences.ts';

const EVERY = STEPS.flatMap((step) =>
  METHODS.flatMap((method) =>
    BUILDER_TYPES.map((builderType) => ({ step, ...stepWords(english, step, method, builderType) })),
  ),
);

describe('the words of the steps', () => {
  it('say what, why and what to mind, in whole sentences', () => {
    for (const { step, title, what, why, caution } of EVERY) {
      expect([step, title]).toEqual([step, expect.stringMatching(/^[A-Z].*[^.]$/)]);
      for (const text of [what, why, caution])
        expect([step, text]).toEqual([step, expect.stringMatching(/^[A-Z].{20,}[.]$/)]);
    }
  });

  it('keep to the words of the house', () => {
    const avoided = /\b(inspect(?:ion|ed|ing)?|record|entity|workflow|sync)\b|day \d+ of/i;
    expect(
      EVERY.filter(({ title, what, why, caution }) => avoided.test([title, what, why, caution].join(' '))),
    ).toEqual([]);
  });

  it('use the words of the method before those of the builder, and of neither where there is none', () => {
    expect(stepWords(english, 'give-larvae', 'cut-comb-edge', 'queenless').title).toBe(
      'Trim the comb edge and give it',
    );
    expect(stepWords(english, 'make-queenless', 'larva-grafting', 'divider-board').title).toBe(
      'Close the slide of the divider board',
    );
    expect(stepWords(english, 'remove-queen', 'emergency-cells', 'divider-board').title).toBe(
      STEP_TITLES['remove-queen'],
    );
  });
});
