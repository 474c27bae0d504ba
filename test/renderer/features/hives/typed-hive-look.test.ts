import fc from 'fast-check';
import { expect, test } from 'vitest';
import { followedRows } from '../../../../renderer/components/followed-rows.ts';
import {
  EMPTY_LOOK,
  isEmptyLook,
  lookOf,
  sameLook,
  typedLook,
} from '../../../../renderer/features/hives/typed-hive-look.ts';
import { HiveLook } from '../../../../shared/model/look.ts';

const fields = HiveLook.pick({ strength: true, food: true, note: true });

test('an empty field is not said, never zero; what is no step of five is refused by the record itself', () => {
  expect(lookOf({ strength: ' ', food: '', note: ' calm ' })).toEqual({ strength: null, food: null, note: 'calm' });
  expect(lookOf({ strength: '4', food: '1', note: '' })).toEqual({ strength: 4, food: 1, note: '' });
  for (const strength of ['much', '-1', '12', '3.5', '9'])
    expect(fields.safeParse(lookOf({ strength, food: '', note: '' })).success, strength).toBe(false);
});

test('a saved look reads back as it was typed', () => {
  const step = fc.option(fc.integer({ min: 1, max: 5 }));
  fc.assert(
    fc.property(step, step, fc.string(), (strength, food, text) => {
      const look = { id: 'a', colonyId: 'b', lookedOn: '2026-05-14', strength, food, note: text.trim() };
      expect(lookOf(typedLook(look))).toEqual({ strength, food, note: text.trim() });
      expect(isEmptyLook(typedLook(look))).toBe(strength === null && food === null && text.trim() === '');
      expect(sameLook(typedLook(look), { ...typedLook(look), note: ` ${text} ` })).toBe(true);
    }),
  );
});

test('rows follow the workbook after an undo; what is typed, being saved or refused stays', () => {
  const strong = { strength: '4', food: '', note: 'strong' };
  const shown = {
    typed: new Map([
      ['undone', strong],
      ['typing', { ...strong, note: 'strong, and more' }],
      ['saving', strong],
      ['as it was', strong],
    ]),
    saved: new Map(['undone', 'typing', 'saving', 'as it was'].map((id) => [id, strong] as const)),
  };
  const look = { id: 'l', colonyId: 'c', lookedOn: '2026-06-01', strength: 4, food: null, note: 'strong' };
  const rows = [
    { id: 'undone', typed: null },
    { id: 'typing', typed: null },
    { id: 'saving', typed: null },
    { id: 'as it was', typed: look },
  ];
  const follow = (some: typeof rows) =>
    followedRows(
      some.map(({ id, typed }) => ({ id, now: typedLook(typed) })),
      shown,
      { empty: EMPTY_LOOK, same: sameLook, isBusy: (id) => id === 'saving' },
    );
  const now = follow(rows);
  expect(now.typed.get('undone')).toEqual({ strength: '', food: '', note: '' });
  expect(now.typed.get('typing')?.note).toBe('strong, and more');
  expect(now.saved.get('typing')?.note).toBe('');
  expect(now.typed.get('saving')).toEqual(strong);
  expect(now.typed.get('as it was')).toEqual(strong);
  expect(follow(rows.slice(3))).toBe(shown);
});
