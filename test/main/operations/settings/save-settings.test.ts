import { expect, test } from 'vitest';
import { getSettings } from '../../../../main/operations/settings/get-settings.ts';
import { saveSettings } from '../../../../main/operations/settings/save-settings.ts';
import { SaveSettings } from '../../../../shared/contract/settings.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { refusalOf } from '../../../builders/running-batch.ts';

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

test('a letter for two results is refused, and nothing is saved', () => {
  const desk = aDesk();
  expect(refusalOf(saveSettings(desk, { resultLetters: { laying: 'V' } }))).toEqual({
    kind: 'result-key-twice',
    field: 'resultLetters',
    key: 'V',
    results: ['laying', 'virgin'],
  });
  expect(getSettings(desk).resultLetters).toEqual({});
  mustOk(saveSettings(desk, { resultLetters: { laying: 'V', virgin: 'J' } }));
  expect(getSettings(desk).resultLetters).toEqual({ laying: 'V', virgin: 'J' });
});

test('a key is one letter or the dot: digits stay with the number pad', () => {
  const letter = (key: string) => SaveSettings.safeParse({ resultLetters: { laying: key } });
  expect(letter('ä').data?.resultLetters).toEqual({ laying: 'Ä' });
  expect(letter('.').success).toBe(true);
  for (const key of ['1', '', 'ab', '/', ' ']) expect(letter(key).success, key).toBe(false);
});

test('who types must be on the list of those who do, and leaves it with the name', () => {
  const desk = aDesk();
  expect(refusalOf(saveSettings(desk, { writer: 'Maria' }))).toEqual({
    ...{ kind: 'writer-not-listed', field: 'writer', name: 'Maria' },
  });
  mustOk(saveSettings(desk, { people: ['Maria', 'Jo'], writer: 'Maria' }));
  expect(getSettings(desk).writer).toBe('Maria');
  expect(mustOk(saveSettings(desk, { people: ['Jo'] })).writer).toBeNull();
});

test('every change says who typed it, an undo says who took it back', () => {
  const desk = aDesk();
  mustOk(saveSettings(desk, { theme: 'dark' }));
  mustOk(saveSettings(desk, { people: ['Maria', 'Jo'], writer: 'Maria' }));
  mustOk(saveSettings(desk, { theme: 'light' }));
  mustOk(saveSettings(desk, { writer: 'Jo' }));
  mustOk(saveSettings(desk, { theme: 'dark' }));
  mustOk(desk.workbook.undo());
  expect(desk.workbook.journal.steps(null, 9).map(({ kind, typedBy }) => [kind, typedBy])).toEqual([
    ['undo', 'Jo'],
    ...[
      ['change', 'Jo'],
      ['change', 'Jo'],
    ],
    ['change', 'Maria'],
    ['change', 'Maria'],
    ['change', null],
  ]);
});
