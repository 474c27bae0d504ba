import { expect, test } from 'vitest';
import { getSettings } from '../../../../main/operations/settings/get-settings.ts';
import { aDesk, fill } from '../../../builders/desk.ts';

const DEFAULTS = {
  theme: 'system',
  textSizePercent: 100,
  density: 'comfortable',
  language: 'system',
  dateOrder: 'day-first',
  weekStart: 'monday',
  temperature: 'celsius',
  measures: 'metric',
  letterKeys: true,
  resultLetters: {},
  people: [],
  writer: null,
  awayDays: [],
  workWeekdays: [1, 2, 3, 4, 5, 6, 7],
  cellsPerBuilder: 20,
  builderRestDays: 5,
  seasonFactorPercent: 100,
  firstDroneEggsOn: null,
};

test('a new workbook has the defaults', () => {
  expect(getSettings(aDesk())).toEqual(DEFAULTS);
});

test('a value that does not fit gives way to its default, and keys of others are ignored', () => {
  const desk = aDesk();
  fill(desk, ({ settings }) => {
    settings.put('theme', 'violet');
    settings.put('cellsPerBuilder', 'many');
    settings.put('density', 'compact');
    settings.put('fromALaterVersion', true);
  });
  expect(getSettings(desk)).toEqual({ ...DEFAULTS, density: 'compact' });
});
