import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CodeField, NameField, NoteField } from '../../../shared/model/fields.ts';

/** Every sign that ECMAScript calls white space or a line end, so also what a scanner or a spreadsheet leaves behind. */
const BLANKS = ['\t', '\n', '\v', '\f', '\r', ' ', '\u00a0', '\u2003', '\u2028', '\u202f', '\u3000', '\ufeff'];
const blanks = fc.array(fc.constantFrom(...BLANKS), { maxLength: 4 }).map((some) => some.join(''));

test.each([
  ['code', CodeField],
  ['name', NameField],
  ['note', NoteField],
] as const)('blanks around a %s go when it comes in, once: what is kept comes back as it is', (_what, field) => {
  fc.assert(
    fc.property(blanks, fc.constantFrom('26-041', 'K 07', 'Ž'), blanks, (before, text, after) => {
      expect(field.parse(before + text + after)).toBe(text);
    }),
  );
});

test('blanks alone are no code and no name, and do not count as signs of one', () => {
  fc.assert(
    fc.property(blanks, (some) => {
      expect([CodeField.safeParse(some).success, NameField.safeParse(some).success]).toEqual([false, false]);
      expect(CodeField.parse(`${some}123456789012${some}`)).toHaveLength(12);
    }),
  );
});
