import { expect, test } from 'vitest';
import { tooOld } from '../../../../renderer/features/settings/second-place-age.ts';

test('a copy of 14 days ago is recent enough, one of 15 is not, none is not a matter of age', () => {
  expect(tooOld('2026-05-01T20:00:00.000Z', '2026-05-15')).toBeNull();
  expect(tooOld('2026-05-01T20:00:00.000Z', '2026-05-16')).toBe(15);
  expect(tooOld('2026-02-27T20:00:00.000Z', '2026-03-29')).toBe(30);
  expect(tooOld(null, '2026-05-15')).toBeNull();
});
