import { describe, expect, test } from 'vitest';
import { acceptProposal } from '../../../../main/operations/boxes/accept-proposal.ts';
import { endPlacement } from '../../../../main/operations/boxes/end-placement.ts';
import { listBoxes } from '../../../../main/operations/boxes/list-boxes.ts';
import { recordLook } from '../../../../main/operations/boxes/record-look.ts';
import { removeLook } from '../../../../main/operations/boxes/remove-look.ts';
import { getUndoState } from '../../../../main/operations/history/get-undo-state.ts';
import { undo } from '../../../../main/operations/history/undo.ts';
import type { Desk } from '../../../../main/operations/operation.ts';
import { countTally } from '../../../../main/operations/tally-keeping.ts';
import type { LookResult } from '../../../../shared/model/look.ts';
import { fill, mustOk } from '../../../builders/desk.ts';
import { aLook } from '../../../builders/mating-box.ts';
import { aDeskWithBoxes, refusalOf } from '../../../builders/running-batch.ts';

/** Cells were put into K01 to K06 on 14 May 2026; the queens are expected out on 16 May. */
const TODAY = '2026-06-06';

const type = (desk: Desk, id: string, lookedOn: string, result: LookResult, number: string | null = null) =>
  mustOk(
    recordLook(desk, {
      ...aLook({ id, boxId: 'box-1', lookedOn, result }),
      queen: number === null ? null : { id: 'q1', number },
    }),
  );
const boxOf = (desk: Desk) => listBoxes(desk).find((line) => line.id === 'box-1');
const tallyOf = (desk: Desk) => desk.workbook.tables.tallies.get('batch-1');

describe('a look that is taken out', () => {
  test('leaves the box and the sums as its other looks say, and an undo brings all of it back', () => {
    const desk = aDeskWithBoxes(TODAY);
    type(desk, 'first', '2026-05-28', 'laying');
    const before = { box: boxOf(desk), tally: tallyOf(desk) };
    type(desk, 'wrong', TODAY, 'gone');
    const withBoth = { box: boxOf(desk), tally: tallyOf(desk) };
    expect(withBoth).toMatchObject({ box: { state: 'failed' }, tally: { matingKnown: 1, proved: 0 } });
    const { boxes } = mustOk(removeLook(desk, { lookId: 'wrong' }));
    expect(boxes).toEqual([before.box]);
    expect(boxes[0]).toMatchObject({ state: 'laying', lastResult: 'laying', lastLookOn: '2026-05-28' });
    expect(tallyOf(desk)).toEqual(before.tally);
    expect(tallyOf(desk)).toEqual(countTally(desk.workbook.tables, 'batch-1'));
    expect(getUndoState(desk).undo?.words).toEqual({ did: 'remove-look', box: 'K01', on: TODAY });
    mustOk(undo(desk));
    expect({ box: boxOf(desk), tally: tallyOf(desk) }).toEqual(withBoth);
  });

  test('the only one leaves the box as nothing was seen in it', () => {
    const desk = aDeskWithBoxes(TODAY);
    const before = boxOf(desk);
    type(desk, 'only', TODAY, 'proved');
    mustOk(removeLook(desk, { lookId: 'only' }));
    expect(boxOf(desk)).toEqual(before);
    expect(tallyOf(desk)).toMatchObject({ emergenceKnown: 0, matingKnown: 0, proved: 0 });
  });

  test('leaves the queen her number', () => {
    const desk = aDeskWithBoxes(TODAY);
    type(desk, 'marked', TODAY, 'laying', '26-001');
    const queen = desk.workbook.tables.queens.get('q1');
    mustOk(removeLook(desk, { lookId: 'marked' }));
    expect(queen).not.toBeNull();
    expect(desk.workbook.tables.queens.get('q1')).toEqual(queen);
    expect(boxOf(desk)?.queenNumber).toBe('26-001');
  });

  test('counts no more in the batch of an ended cell, and leaves the box free', () => {
    const desk = aDeskWithBoxes(TODAY);
    type(desk, 'first', '2026-05-28', 'laying');
    mustOk(endPlacement(desk, { placementId: 'placement-1', endedOn: TODAY, reason: 'other' }));
    const free = boxOf(desk);
    mustOk(removeLook(desk, { lookId: 'first' }));
    // Brood was not seen in it after all, so its bees have been without since the cell came.
    expect(boxOf(desk)).toEqual({ ...free, layingWorkersFrom: '2026-06-04', layingWorkersLatest: '2026-06-11' });
    expect(tallyOf(desk)).toMatchObject({ emergenceKnown: 0, laying: 0 });
  });

  test('in a box without a cell goes as well; one that is gone is refused', () => {
    const desk = aDeskWithBoxes(TODAY);
    fill(desk, ({ boxLooks }) => boxLooks.insert(aLook({ id: 'empty', boxId: 'box-9', placementId: null })));
    expect(mustOk(removeLook(desk, { lookId: 'empty' })).boxes[0]?.code).toBe('K09');
    expect(refusalOf(removeLook(desk, { lookId: 'empty' }))).toEqual({ kind: 'look-missing' });
  });
});

describe('the look that was wanted again', () => {
  /** A virgin on 28 May; another look is accepted, and typed on 4 June. */
  function answered(result: LookResult = 'laying'): Desk {
    const desk = aDeskWithBoxes('2026-05-28');
    type(desk, 'first', '2026-05-28', 'virgin');
    const { proposal } = boxOf(desk) ?? {};
    expect(proposal?.kind).toBe('look-again');
    const accepted = {
      boxId: 'box-1',
      placementId: 'placement-1',
      kind: 'look-again',
      on: proposal?.on ?? '',
    } as const;
    mustOk(acceptProposal(desk, accepted));
    type(desk, 'again', '2026-06-04', result);
    return desk;
  }
  const wanted = (desk: Desk) => desk.workbook.tables.followUps.where({ boxId: 'box-1', doneOn: null }).length;

  test('is wanted still when the look that answered it is taken out', () => {
    const desk = answered();
    expect(wanted(desk)).toBe(0);
    mustOk(removeLook(desk, { lookId: 'again' }));
    expect(wanted(desk)).toBe(1);
    mustOk(undo(desk));
    expect(wanted(desk)).toBe(0);
  });

  test('is not when a later look answers it too, or the box is free', () => {
    const later = answered();
    type(later, 'later', TODAY, 'proved');
    mustOk(removeLook(later, { lookId: 'again' }));
    expect(wanted(later)).toBe(0);
    const freed = answered();
    mustOk(endPlacement(freed, { placementId: 'placement-1', endedOn: TODAY, reason: 'caught' }));
    mustOk(removeLook(freed, { lookId: 'again' }));
    expect(wanted(freed)).toBe(0);
  });
});
