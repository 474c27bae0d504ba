import { expect, test } from 'vitest';
import { recordFeeding } from '../../../../main/operations/feeding/record-feeding.ts';
import { undo } from '../../../../main/operations/history/undo.ts';
import { saveSettings } from '../../../../main/operations/settings/save-settings.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aFeeding, typedFeeding } from '../../../builders/feeding.ts';
import { aBox } from '../../../builders/mating-box.ts';
import { refusalOf } from '../../../builders/running-batch.ts';

function aFedDesk() {
  const desk = aDesk({ today: '2026-05-14' });
  fill(desk, ({ colonies, boxes }) => {
    colonies.insert(aColony());
    boxes.insert(aBox());
  });
  return { desk, feedings: () => desk.workbook.tables.feedings.all() };
}

test('writes down what a hive was fed, corrects it by the same id, and can be taken back', () => {
  const { desk, feedings } = aFedDesk();
  mustOk(recordFeeding(desk, typedFeeding));
  expect(feedings()).toEqual([aFeeding()]);
  mustOk(recordFeeding(desk, { ...typedFeeding, amount: '1.5', note: ' warm ' }));
  expect(feedings()).toMatchObject([{ id: 'feeding-1', litres: 1.5, note: ' warm ' }]);
  mustOk(undo(desk));
  expect(feedings()).toEqual([aFeeding()]);
});

test('a mating box is fed as well, and an amount that is not known stays unknown', () => {
  const { desk, feedings } = aFedDesk();
  mustOk(recordFeeding(desk, { ...typedFeeding, place: 'box', placeId: 'box-1', feed: 'fondant', amount: '?' }));
  expect(feedings()).toEqual([
    aFeeding({ colonyId: null, boxId: 'box-1', feed: 'fondant', litres: null, kilograms: null }),
  ]);
});

test('a bare number is read in the measures the person chose', () => {
  const { desk, feedings } = aFedDesk();
  mustOk(saveSettings(desk, { measures: 'us' }));
  mustOk(recordFeeding(desk, { ...typedFeeding, amount: '2' }));
  // Two liquid quarts: NIST SP 811, B.8.
  expect(feedings()).toMatchObject([{ litres: 1.893 }]);
});

test('a feed in own words needs its name, and keeps it only then', () => {
  const { desk, feedings } = aFedDesk();
  const own = { ...typedFeeding, feed: 'other', amount: '' } as const;
  expect(refusalOf(recordFeeding(desk, own))).toEqual({ kind: 'feed-not-named', field: 'ownFeed' });
  mustOk(recordFeeding(desk, { ...own, ownFeed: 'inverted syrup' }));
  expect(feedings()).toMatchObject([{ feed: 'other', ownFeed: 'inverted syrup' }]);
  mustOk(recordFeeding(desk, { ...typedFeeding, ownFeed: 'left over' }));
  expect(feedings()).toMatchObject([{ feed: 'syrup-1-1', ownFeed: null }]);
});

test('refuses what is no amount, too much, and a place that is not there; a day to come is said', () => {
  const { desk, feedings } = aFedDesk();
  const refused = (changes: Partial<Parameters<typeof recordFeeding>[1]>) =>
    refusalOf(recordFeeding(desk, { ...typedFeeding, ...changes }));
  expect(refused({ amount: 'plenty' })).toMatchObject({ kind: 'amount-unreadable', text: 'plenty' });
  expect(refused({ amount: '101' })).toMatchObject({ kind: 'amount-too-large' });
  expect(refused({ placeId: 'h99' })).toMatchObject({ kind: 'nothing-to-feed', field: 'placeId' });
  expect(feedings()).toEqual([]);
  const { notices } = mustOk(recordFeeding(desk, { ...typedFeeding, amount: '100', fedOn: '2026-05-15' }));
  expect(notices).toEqual([{ kind: 'day-in-future', field: 'fedOn', day: '2026-05-15' }]);
});
