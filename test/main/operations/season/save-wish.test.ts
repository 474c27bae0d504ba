import { expect, test } from 'vitest';
import { getSeasonPlan } from '../../../../main/operations/season/get-season-plan.ts';
import { saveWish } from '../../../../main/operations/season/save-wish.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';

const CLUB = { id: 'wish-1', forWhom: 'Club', queens: 5, wantedOn: '2026-06-20', settledOn: null, note: null };

test('a wish is written down once, and corrected by its id', () => {
  const desk = aDesk();
  mustOk(saveWish(desk, CLUB));
  mustOk(saveWish(desk, { ...CLUB, queens: 6 }));
  expect(getSeasonPlan(desk).wishes).toMatchObject([{ forWhom: 'Club', queens: 6, handedOver: 0, open: 6 }]);
});

test('a settled wish asks for nothing any more', () => {
  const desk = aDesk();
  mustOk(saveWish(desk, { ...CLUB, settledOn: '2026-06-18' }));
  expect(getSeasonPlan(desk)).toMatchObject({ weeks: [], wishes: [{ open: 0 }] });
});
