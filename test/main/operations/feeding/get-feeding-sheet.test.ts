import { expect, test } from 'vitest';
import type { z } from 'zod';
import { getFeedingSheet } from '../../../../main/operations/feeding/get-feeding-sheet.ts';
import type { Desk } from '../../../../main/operations/operation.ts';
import type { FeedingSheet } from '../../../../shared/contract/feeding.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, fill } from '../../../builders/desk.ts';
import { aFeeding } from '../../../builders/feeding.ts';
import { aBox } from '../../../builders/mating-box.ts';
import { aDeskWithBatch, onDay } from '../../../builders/running-batch.ts';
import { aYard } from '../../../builders/yard.ts';

const ASKED = {
  places: 'hives',
  yardId: null,
  sheetDay: '2026-05-14',
  feed: 'syrup-1-1',
  ownFeed: null,
} as const;

function aFedDesk() {
  const desk = aDesk();
  fill(desk, ({ yards, colonies, boxes, feedings }) => {
    yards.insert(aYard());
    colonies.insert(aColony({ id: 'h10', code: 'H10', yardId: 'yard-1', place: 'gate' }));
    colonies.insert(aColony({ id: 'h2', code: 'H2' }));
    colonies.insert(aColony({ id: 'old', code: 'H3', endedOn: '2025-10-01' }));
    boxes.insert(aBox({ id: 'k2', code: 'K02', walkOrder: 1 }));
    boxes.insert(aBox({ id: 'k1', code: 'K01', walkOrder: 2, yardId: 'yard-1', row: 'fence' }));
    boxes.insert(aBox({ id: 'k3', code: 'K03', walkOrder: 3, retiredOn: '2026-04-01' }));
    feedings.insert(aFeeding({ id: 'today', colonyId: 'h2' }));
    feedings.insert(aFeeding({ id: 'before', colonyId: 'h2', fedOn: '2026-05-10', feed: 'fondant' }));
    feedings.insert(aFeeding({ id: 'own', colonyId: 'h2', feed: 'other', ownFeed: 'malt' }));
  });
  return desk;
}
const rows = (desk: Desk, changes: Partial<z.infer<typeof FeedingSheet>> = {}) =>
  getFeedingSheet(desk, { ...ASKED, ...changes }).rows;

test('living hives stand by yard and code, boxes in use in walking order', () => {
  const desk = aFedDesk();
  expect(rows(desk).map(({ code, where }) => [code, where])).toEqual([
    ['H2', []],
    ['H10', ['Orchard', 'gate']],
  ]);
  expect(rows(desk, { places: 'boxes' }).map(({ code }) => code)).toEqual(['K02', 'K01']);
  expect(rows(desk, { yardId: 'yard-1' }).map(({ code }) => code)).toEqual(['H10']);
  expect(rows(desk, { places: 'boxes', yardId: 'yard-1' }).map(({ where }) => where)).toEqual([['Orchard', 'fence']]);
});

test('a row knows what was typed for this day and feed, and the last feeding before it', () => {
  const desk = aFedDesk();
  const row = (changes: Partial<z.infer<typeof FeedingSheet>>) => {
    const { typed, last } = rows(desk, changes).find(({ id }) => id === 'h2') ?? {};
    return [typed?.id ?? null, last?.id ?? null];
  };
  expect(row({})).toEqual(['today', 'before']);
  expect(row({ feed: 'fondant' })).toEqual([null, 'before']);
  expect(row({ feed: 'other', ownFeed: 'malt' })).toEqual(['own', 'before']);
  expect(row({ feed: 'other', ownFeed: 'honey' })).toEqual([null, 'before']);
  expect(row({ sheetDay: '2026-05-15', feed: 'fondant' })[0]).toBeNull();
  expect(row({ sheetDay: '2026-05-10' })).toEqual([null, null]);
});

test('a builder whose brood must be left alone says until when', () => {
  // Prepupae and young pupae, days 5.5 to 8.5 after larvae: no shaking, no turning [Wang et al. 2016].
  const shut = rows(onDay(aDeskWithBatch(), '2026-05-11'), { sheetDay: '2026-05-11' });
  expect(shut.map(({ code, handsOffUntil }) => [code, handsOffUntil])).toEqual([
    ['H03', null],
    ['H12', '2026-05-12'],
  ]);
});
