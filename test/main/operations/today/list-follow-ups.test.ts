import { expect, test } from 'vitest';
import { acceptProposal } from '../../../../main/operations/boxes/accept-proposal.ts';
import { listBoxes } from '../../../../main/operations/boxes/list-boxes.ts';
import { recordLook } from '../../../../main/operations/boxes/record-look.ts';
import { listFollowUps } from '../../../../main/operations/today/list-follow-ups.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBoxes, onDay } from '../../../builders/running-batch.ts';

const typed = { boxId: 'box-1', strength: null, food: null, note: null, queen: null };

test('a look that was planned is listed from the day before, late after three days, and answered by the look itself', () => {
  const desk = aDeskWithBoxes('2026-05-28');
  mustOk(recordLook(desk, { id: 'l', lookedOn: '2026-05-28', result: 'virgin', ...typed }));
  const accept = { boxId: 'box-1', placementId: 'placement-1', kind: 'look-again', on: '2026-05-28' } as const;
  mustOk(acceptProposal(desk, accept));
  const listed = (day: string) =>
    listFollowUps(onDay(desk, day)).map(({ box, dueOn, late }) => [box?.code, dueOn, late]);
  expect(listed('2026-05-30')).toEqual([]);
  expect(listed('2026-05-31')).toEqual([['K01', '2026-06-01', false]]);
  expect(listed('2026-06-04')).toEqual([['K01', '2026-06-01', false]]);
  expect(listed('2026-06-05')).toEqual([['K01', '2026-06-01', true]]);
  expect(listBoxes(desk)[0]).toMatchObject({ nextLookOn: '2026-06-01', proposal: null });
  mustOk(recordLook(desk, { id: 'l2', lookedOn: '2026-06-01', result: 'not-looked', ...typed }));
  expect(listed('2026-06-01')).toHaveLength(1);
  mustOk(recordLook(desk, { id: 'l3', lookedOn: '2026-06-02', result: 'laying', ...typed }));
  expect(listed('2026-06-02')).toEqual([]);
  expect(desk.workbook.tables.followUps.all()[0]).toMatchObject({ doneOn: '2026-06-02', answer: 'well' });
});
