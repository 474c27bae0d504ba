import { describe, expect, test } from 'vitest';
import type { Desk } from '../../../../main/operations/operation.ts';
import { moveQueen } from '../../../../main/operations/queens/move-queen.ts';
import { answerFollowUp } from '../../../../main/operations/today/answer-follow-up.ts';
import type { FollowUpKind } from '../../../../shared/model/follow-up.ts';
import type { FollowUpAnswer } from '../../../../shared/model/follow-up-answer.ts';
import { fill, mustOk } from '../../../builders/desk.ts';
import { aQueen } from '../../../builders/queen.ts';
import { aDeskWithBatch, refusalOf } from '../../../builders/running-batch.ts';

/** 25-001 was brought to H12 in a candy cage on 1 June: cage on the 4th, eggs on the 8th, stayed on the 29th. */
function aDeskWithChecks(): Desk {
  const desk = aDeskWithBatch('2026-06-04');
  fill(desk, ({ queens }) => queens.insert(aQueen({ number: '25-001', bornIn: 2025, place: 'caged' })));
  const to = { place: 'in-hive', colonyId: 'h12', way: 'candy-cage', goneTo: null, price: null, note: null } as const;
  mustOk(moveQueen(desk, { id: 'm', queenId: 'queen-1', movedOn: '2026-06-01', ...to }));
  return desk;
}
const idOf = (desk: Desk, what: FollowUpKind) =>
  desk.workbook.tables.followUps.where({ what, doneOn: null })[0]?.id ?? '';
const answer = (desk: Desk, what: FollowUpKind, said: FollowUpAnswer, doneOn = '2026-06-04') =>
  answerFollowUp(desk, { followUpId: idOf(desk, what), doneOn, answer: said, note: null });
const open = (desk: Desk) => desk.workbook.tables.followUps.where({ doneOn: null }).map((one) => [one.what, one.dueOn]);

describe('the answer to a check', () => {
  test('as hoped: it is done, and the others wait for their days', () => {
    const desk = aDeskWithChecks();
    expect(mustOk(answer(desk, 'check-release', 'well'))).toMatchObject({
      doneOn: '2026-06-04',
      answer: 'well',
      late: false,
    });
    expect(open(desk)).toEqual([
      ['check-eggs', '2026-06-08'],
      ['check-queen', '2026-06-29'],
    ]);
  });

  test('not yet: another look a few days on', () => {
    const desk = aDeskWithChecks();
    mustOk(answer(desk, 'check-eggs', 'not-yet', '2026-06-09'));
    expect(open(desk)).toEqual([
      ['check-release', '2026-06-04'],
      ['check-queen', '2026-06-29'],
      ['check-eggs', '2026-06-13'],
    ]);
  });

  test('gone: she is lost, and nothing more is checked', () => {
    const desk = aDeskWithChecks();
    mustOk(answer(desk, 'check-release', 'gone'));
    expect(open(desk)).toEqual([]);
    expect(desk.workbook.tables.queens.get('queen-1')).toMatchObject({ place: 'lost', colonyId: null });
  });
});

test('refuses a check that is gone, and a day before she was brought there', () => {
  const desk = aDeskWithChecks();
  expect(refusalOf(answer(desk, 'check-release', 'well', '2026-05-31'))).toEqual({
    kind: 'answered-before-move',
    field: 'doneOn',
    movedOn: '2026-06-01',
  });
  expect(refusalOf(answer(desk, 'look-again', 'well'))).toEqual({ kind: 'follow-up-missing' });
  mustOk(answer(desk, 'check-release', 'well', '2026-06-01'));
});
