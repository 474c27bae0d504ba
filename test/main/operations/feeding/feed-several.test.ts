import { expect, test } from 'vitest';
import { feedSeveral } from '../../../../main/operations/feeding/feed-several.ts';
import { getUndoState } from '../../../../main/operations/history/get-undo-state.ts';
import { undo } from '../../../../main/operations/history/undo.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aBox } from '../../../builders/mating-box.ts';
import { refusalOf } from '../../../builders/running-batch.ts';

const FED = { fedOn: '2026-05-14', feed: 'fondant', ownFeed: null, amount: '300 g', note: null } as const;
const IDS = ['a', 'b', 'c', 'd'];

function aDeskOfBoxes() {
  const desk = aDesk();
  fill(desk, ({ colonies, boxes }) => {
    colonies.insert(aColony({ id: 'h12', code: 'h12' }));
    for (const code of ['K01', 'K02', 'K03']) boxes.insert(aBox({ id: code, code }));
    boxes.insert(aBox({ id: 'old', code: 'K04', retiredOn: '2026-04-01' }));
  });
  return { desk, fed: () => desk.workbook.tables.feedings.all() };
}

test('a span of boxes and a hive get the same, in one step that one undo takes back', () => {
  const { desk, fed } = aDeskOfBoxes();
  const { feedings } = mustOk(feedSeveral(desk, { ids: IDS, places: 'K01-K03, H12', ...FED }));
  expect(feedings.map(({ id, boxId, colonyId, kilograms }) => [id, boxId, colonyId, kilograms])).toEqual([
    ['a', 'K01', null, 0.3],
    ['b', 'K02', null, 0.3],
    ['c', 'K03', null, 0.3],
    ['d', null, 'h12', 0.3],
  ]);
  expect(getUndoState(desk).undo?.words).toMatchObject({ did: 'record-feeding', places: 'H12, K01–K03' });
  mustOk(undo(desk));
  expect(fed()).toEqual([]);
});

test('one code that is not there, or is out of use, leaves all of them unfed', () => {
  const { desk, fed } = aDeskOfBoxes();
  for (const [places, code] of [
    ['K01-K04', 'K04'],
    ['K01, H99', 'H99'],
  ] as const)
    expect(refusalOf(feedSeveral(desk, { ids: IDS, places, ...FED }))).toEqual({
      kind: 'nothing-to-feed',
      field: 'places',
      code,
    });
  expect(refusalOf(feedSeveral(desk, { ids: IDS, places: 'K01 to K03!', ...FED }))).toMatchObject({
    kind: 'box-codes-unreadable',
    field: 'places',
  });
  expect(refusalOf(feedSeveral(desk, { ids: ['a'], places: 'K01-K03', ...FED }))).toMatchObject({
    kind: 'wrong-number-of-ids',
  });
  expect(refusalOf(feedSeveral(desk, { ids: IDS, places: 'K01', ...FED, amount: 'much' }))).toMatchObject({
    kind: 'amount-unreadable',
  });
  expect(fed()).toEqual([]);
});
