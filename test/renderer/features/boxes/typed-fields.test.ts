import { expect, test } from 'vitest';
import { beginning, fieldId, savedFields } from '../../../../renderer/features/boxes/typed-fields.ts';
import type { LookRow } from '../../../../shared/contract/boxes.ts';

const row = (id: string, typed: Partial<NonNullable<LookRow['typed']>> | null, queenNumber: string | null = null) =>
  ({
    id,
    queenNumber,
    typed: typed && { result: 'laying', strength: null, food: null, note: null, ...typed },
  }) as LookRow;

const rows = [row('a', { strength: 4, note: 'calm' }, '26-001'), row('b', null), row('c', null)];
const half = (kept: Readonly<Record<string, string>>) => (field: string) => kept[field] ?? null;

test('each field of a row is known as the workbook has it', () => {
  expect(savedFields(rows.slice(0, 2))).toEqual([
    { id: 'a.number', now: '26-001' },
    { id: 'a.strength', now: '4' },
    { id: 'a.food', now: '' },
    { id: 'a.note', now: 'calm' },
    ...['number', 'strength', 'food', 'note'].map((field) => ({ id: `b.${field}`, now: '' })),
  ]);
});

test('typing goes on in the half-typed row, at a number if one was being given, else at the first row without a look', () => {
  expect(beginning(rows, half({})).state).toEqual({ current: 1, filling: null, numbering: false });
  expect(beginning(rows, half({ [fieldId('c', 'note')]: 'wi' })).state.current).toBe(2);
  expect(beginning(rows, half({ [fieldId('a', 'number')]: '26-7' }))).toEqual({
    state: { current: 0, filling: null, numbering: true },
    number: '26-7',
  });
});
