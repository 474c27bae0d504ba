import { expect, test } from 'vitest';
import { headOn, hiveStays } from '../../../../main/engine/pedigree/hive-stays.ts';
import { type Day, dayOfIso } from '../../../../shared/kernel/day.ts';

const day = (iso: string): Day => dayOfIso(iso);
const move = (queenId: string, on: string, colonyId: string | null) => ({ queenId, on: day(on), colonyId });

test('a queen heads a hive until she leaves it, or until another is brought in', () => {
  const stays = hiveStays([
    move('b', '2025-08-01', 'h1'),
    move('a', '2024-06-01', 'h1'),
    move('c', '2025-05-01', 'h2'),
    move('c', '2025-09-01', null),
  ]);
  expect(stays).toEqual([
    { queenId: 'a', colonyId: 'h1', from: day('2024-06-01'), until: day('2025-08-01') },
    { queenId: 'c', colonyId: 'h2', from: day('2025-05-01'), until: day('2025-09-01') },
    { queenId: 'b', colonyId: 'h1', from: day('2025-08-01'), until: null },
  ]);
  expect(headOn(stays, 'h1', day('2024-05-31'))).toBeNull();
  expect(headOn(stays, 'h1', day('2024-06-01'))).toBe('a');
  expect(headOn(stays, 'h1', day('2025-07-31'))).toBe('a');
  expect(headOn(stays, 'h1', day('2025-08-01'))).toBe('b');
  expect(headOn(stays, 'h2', day('2025-09-01'))).toBeNull();
  expect(headOn(stays, 'h3', day('2025-09-01'))).toBeNull();
});

test('brought to the same hive twice, as after a failed introduction, she is one queen still', () => {
  const stays = hiveStays([move('a', '2025-06-01', 'h1'), move('a', '2025-06-10', 'h1')]);
  expect(headOn(stays, 'h1', day('2025-06-05'))).toBe('a');
  expect(headOn(stays, 'h1', day('2025-06-12'))).toBe('a');
});
