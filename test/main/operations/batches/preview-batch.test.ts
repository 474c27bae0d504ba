import { expect, test } from 'vitest';
import { previewBatch } from '../../../../main/operations/batches/preview-batch.ts';
import { saveSettings } from '../../../../main/operations/settings/save-settings.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { aStart, refusalOf } from '../../../builders/running-batch.ts';

test('dates the form without writing anything', () => {
  const desk = aDesk({ today: '2026-05-01' });
  const view = mustOk(previewBatch(desk, aStart({ anchorStep: 'insert-frame', anchorOn: '2026-05-01' })));
  // Drawn comb: larvae four days after it went in, cells moved ten days later (common practice, no source).
  expect(view.larvaeGivenOn).toBe('2026-05-05');
  expect(view.lines.find((line) => line.step === 'place-cells')?.expected).toBe('2026-05-15');
  // Queens out on 17 May fly from the 22nd; drones are mature 40 days after the egg, 60 are advised [COLOSS BEEBOOK].
  expect(view.drones).toEqual({
    fliesFrom: '2026-05-22',
    layLatest: '2026-04-12',
    combInAdvised: '2026-03-23',
    matureFrom: null,
  });
  expect(desk.workbook.tables.batches.all()).toEqual([]);
});

test('knows from when the person’s own drones are mature', () => {
  const desk = aDesk({ today: '2026-05-01' });
  mustOk(saveSettings(desk, { firstDroneEggsOn: '2026-04-02' }));
  // 40 days after the egg [COLOSS BEEBOOK].
  expect(mustOk(previewBatch(desk, aStart())).drones.matureFrom).toBe('2026-05-12');
});

test('refuses what cannot be dated, by its field', () => {
  const desk = aDesk();
  expect(refusalOf(previewBatch(desk, aStart({ comb: null })))).toEqual({ kind: 'comb-needed', field: 'comb' });
  expect(refusalOf(previewBatch(desk, aStart({ anchorStep: 'remove-queen' })))).toMatchObject({
    kind: 'step-not-in-method',
  });
});

test('says what the jobs ask of a person: time, days, the longest one, and things', () => {
  const { work, lines } = mustOk(previewBatch(aDesk({ today: '2026-05-01' }), aStart()));
  const jobs = lines.filter(({ kind }) => kind === 'job');
  expect(work?.minutes).toBe(jobs.reduce((sum, { minutes }) => sum + (minutes ?? 0), 0));
  // Boxes are filled and cells put in on one day, ten days after larvae: the longest.
  expect(work?.longest.on).toBe('2026-05-14');
  expect(work?.days).toBe(new Set(jobs.map(({ expected }) => expected)).size);
  expect(work?.materials).toEqual(expect.arrayContaining(['mating boxes', 'sugar syrup']));
});
