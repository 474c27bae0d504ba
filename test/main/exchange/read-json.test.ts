import { describe, expect, test } from 'vitest';
import { readJson } from '../../../main/exchange/read-json.ts';

const read = (text: string) => readJson(new TextEncoder().encode(text));

describe('a JSON file', () => {
  test('is read whatever mark or encoding it begins with', () => {
    expect(read('\ufeff{"a":[1,"]]]]"]}')).toEqual({ ok: true, value: { a: [1, ']]]]'] } });
    expect(readJson(Uint8Array.from(Buffer.from('\ufeff{"a":"ž"}', 'utf16le')))).toEqual({
      ok: true,
      value: { a: 'ž' },
    });
  });

  test.each([
    ['no JSON', '{"a":', 'not-json'],
    ['lists in lists in lists', '['.repeat(100_000), 'too-deep'],
    ['objects too deep by one', `${'{"a":'.repeat(41)}1${'}'.repeat(41)}`, 'too-deep'],
    ['far too long', `"${'x'.repeat(20_000_000)}"`, 'too-large'],
  ])('%s is declined', (_what, text, reason) => {
    const result = read(text);
    expect(result.ok ? null : result.refusal.reason).toBe(reason);
  });

  test('may be as deep as the limit, and brackets within texts do not count', () => {
    expect(read(`${'['.repeat(40)}${']'.repeat(40)}`).ok).toBe(true);
    expect(read(`["${'['.repeat(100)}\\"${'['.repeat(100)}"]`).ok).toBe(true);
  });
});
