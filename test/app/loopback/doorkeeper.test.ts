// The one-time key and the cookie of the browser shell, on a clock that is moved.
import { expect, test } from 'vitest';
import { Doorkeeper } from '../../../app/loopback/doorkeeper.ts';

/** A doorkeeper, and the clock it looks at. */
function aDoor() {
  const clock = { now: 5_000 };
  return { clock, door: new Doorkeeper(4711, () => clock.now) };
}

test('the key opens within a minute, and once', () => {
  const { clock, door } = aDoor();
  clock.now += 59_999;
  expect(door.spendKey(door.oneTimeKey)).toBe(true);
  expect(door.spendKey(door.oneTimeKey)).toBe(false);
});

test('after a minute the key opens nothing', () => {
  const { clock, door } = aDoor();
  clock.now += 60_000;
  expect(door.spendKey(door.oneTimeKey)).toBe(false);
});

test('a wrong key, of the same length or not, does not spend the right one', () => {
  const { door } = aDoor();
  for (const wrong of ['', 'x', 'f'.repeat(64), `${door.oneTimeKey}0`, door.oneTimeKey.slice(1)])
    expect(door.spendKey(wrong), wrong).toBe(false);
  expect(door.spendKey(door.oneTimeKey)).toBe(true);
});

test('keys and cookies are of 32 random bytes, new at each start', () => {
  const doors = [aDoor().door, aDoor().door];
  for (const door of doors) expect(door.oneTimeKey).toMatch(/^[0-9a-f]{64}$/);
  expect(new Set([...doors.map((door) => door.oneTimeKey), ...doors.map((door) => door.setCookie())]).size).toBe(4);
});
