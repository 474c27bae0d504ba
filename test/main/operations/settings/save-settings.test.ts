import { expect, test } from 'vitest';
import { getSettings } from '../../../../main/operations/settings/get-settings.ts';
import { saveSettings } from '../../../../main/operations/settings/save-settings.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';

test('only the settings named are changed', () => {
  const desk = aDesk();
  const before = getSettings(desk);
  const saved = mustOk(saveSettings(desk, { theme: 'dark', awayDays: ['2026-06-10'] }));
  expect(saved).toEqual({ ...before, theme: 'dark', awayDays: ['2026-06-10'] });
  expect(getSettings(desk)).toEqual(saved);
  mustOk(saveSettings(desk, { builderRestDays: 0 }));
  expect(getSettings(desk)).toEqual({ ...saved, builderRestDays: 0 });
});

test('keys of a later version of the program are kept', () => {
  const desk = aDesk();
  fill(desk, ({ settings }) => settings.put('fromALaterVersion', { kept: true }));
  mustOk(saveSettings(desk, { theme: 'light' }));
  expect(desk.workbook.tables.settings.get('fromALaterVersion')).toEqual({ kept: true });
});
