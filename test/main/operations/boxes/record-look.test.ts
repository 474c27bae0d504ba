import { describe, expect, test } from 'vitest';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { acceptProposal } from '../../../../main/operations/boxes/accept-proposal.ts';
import { endPlacement } from '../../../../main/operations/boxes/end-placement.ts';
import { listBoxes } from '../../../../main/operations/boxes/list-boxes.ts';
import { placeCells } from '../../../../main/operations/boxes/place-cells.ts';
import { recordLook } from '../../../../main/operations/boxes/record-look.ts';
import type { Desk } from '../../../../main/operations/operation.ts';
import { saveQueen } from '../../../../main/operations/queens/save-queen.ts';
import { countTally } from '../../../../main/operations/tally-keeping.ts';
import type { LookResult } from '../../../../shared/model/look.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBoxes, aStart, refusalOf } from '../../../builders/running-batch.ts';

const FIRST_LOOK = '2026-05-28';
const look = (changes: object = {}) => ({
  id: 'l1',
  boxId: 'box-1',
  lookedOn: FIRST_LOOK,
  result: 'laying' as LookResult,
  strength: null,
  food: null,
  note: null,
  queen: null,
  ...changes,
});

/** A second batch whose cell comes into box K01 after the first. */
function aSecondCell(desk: Desk, placedOn: string): void {
  const hives = { newBreeder: null, newBuilder: null };
  mustOk(startBatch(desk, aStart({ id: 'batch-2', ...hives, anchorOn: '2026-05-22' })));
  mustOk(placeCells(desk, { batchId: 'batch-2', boxes: 'K01', ids: ['second'], placedOn, barId: null }));
}

/** Accepts the proposal to look into K01 again. */
function wantedAgain(desk: Desk) {
  const proposal = listBoxes(desk).find((line) => line.id === 'box-1')?.proposal;
  if (proposal?.kind !== 'look-again') throw new Error(`proposed is ${proposal?.kind}`);
  mustOk(acceptProposal(desk, { boxId: 'box-1', placementId: 'placement-1', kind: 'look-again', on: proposal.on }));
  return { dueOn: proposal.on };
}

describe('typing a look', () => {
  test('belongs to the cell in the box and moves the tally; not looked moves nothing', () => {
    const desk = aDeskWithBoxes(FIRST_LOOK);
    const { row } = mustOk(recordLook(desk, look()));
    expect(row).toMatchObject({ code: 'K01', state: 'laying', daysSinceEmergence: 12, typed: { result: 'laying' } });
    mustOk(recordLook(desk, look({ id: 'l2', boxId: 'box-2', result: 'not-looked' })));
    expect(desk.workbook.tables.tallies.get('batch-1')).toMatchObject({
      emergenceKnown: 1,
      emerged: 1,
      matingKnown: 0,
      laying: 1,
    });
  });

  test('the same box and day again corrects the look', () => {
    const desk = aDeskWithBoxes(FIRST_LOOK);
    mustOk(recordLook(desk, look()));
    mustOk(recordLook(desk, look({ id: 'other', result: 'none', note: 'no eggs' })));
    expect(desk.workbook.tables.boxLooks.all().map(({ id, result, note }) => [id, result, note])).toEqual([
      ['l1', 'none', 'no eggs'],
    ]);
    expect(desk.workbook.tables.tallies.get('batch-1')).toMatchObject({
      emerged: 1,
      matingKnown: 1,
      proved: 0,
      laying: 0,
    });
  });

  test('with a number makes the queen of what batch and box know', () => {
    const desk = aDeskWithBoxes('2026-06-06');
    mustOk(recordLook(desk, look()));
    mustOk(
      recordLook(
        desk,
        look({ id: 'l3', lookedOn: '2026-06-06', result: 'proved', queen: { id: 'q1', number: '26-001' } }),
      ),
    );
    expect(desk.workbook.tables.queens.get('q1')).toMatchObject({
      number: '26-001',
      bornIn: 2026,
      breederId: 'h03',
      batchId: 'batch-1',
      firstEggsOn: FIRST_LOOK,
      provedOn: '2026-06-06',
      place: 'in-box',
      boxId: 'box-1',
    });
  });

  test('the same queen typed again keeps where she went and the day she was marked', () => {
    const desk = aDeskWithBoxes('2026-06-20');
    const queen = { id: 'q1', number: '26-001' };
    mustOk(recordLook(desk, look({ queen })));
    const marked = desk.workbook.tables.queens.get('q1');
    if (marked) mustOk(saveQueen(desk, { ...marked, place: 'given', boxId: null, goneTo: 'Club', note: 'gentle' }));
    mustOk(recordLook(desk, look({ id: 'l3', lookedOn: '2026-06-06', result: 'proved', queen })));
    expect(desk.workbook.tables.queens.all()).toEqual([
      expect.objectContaining({
        place: 'given',
        boxId: null,
        goneTo: 'Club',
        note: 'gentle',
        markedOn: FIRST_LOOK,
        firstEggsOn: FIRST_LOOK,
        provedOn: '2026-06-06',
      }),
    ]);
  });

  test('a look of an earlier day gives the queen no day on which she had not been looked at yet', () => {
    const desk = aDeskWithBoxes('2026-06-20');
    mustOk(recordLook(desk, look({ id: 'late', lookedOn: '2026-06-10', result: 'proved' })));
    mustOk(recordLook(desk, look({ result: 'queen', queen: { id: 'q1', number: '26-001' } })));
    expect(desk.workbook.tables.queens.get('q1')).toMatchObject({ firstEggsOn: null, provedOn: null });
  });

  test('a queen numbered by a look of an old day is where she went when her box was emptied', () => {
    const desk = aDeskWithBoxes('2026-06-20');
    mustOk(endPlacement(desk, { placementId: 'placement-1', endedOn: '2026-06-08', reason: 'caught' }));
    const numbered = look({ lookedOn: '2026-06-06', result: 'proved', queen: { id: 'q1', number: '26-001' } });
    mustOk(recordLook(desk, numbered));
    mustOk(recordLook(desk, { ...numbered, note: 'typed again' }));
    expect(desk.workbook.tables.queens.get('q1')).toMatchObject({
      place: 'caged',
      boxId: null,
      provedOn: '2026-06-06',
    });
    expect(desk.workbook.tables.queenMoves.all().map(({ movedOn, place }) => [movedOn, place])).toEqual([
      ['2026-06-08', 'caged'],
    ]);
  });

  test('only the newest look answers one that was wanted again', () => {
    const desk = aDeskWithBoxes('2026-06-04');
    mustOk(recordLook(desk, look({ result: 'virgin' })));
    const { dueOn } = wantedAgain(desk);
    const open = () => desk.workbook.tables.followUps.where({ doneOn: null }).map((one) => one.dueOn);
    mustOk(recordLook(desk, look({ result: 'virgin', note: 'corrected' })));
    mustOk(recordLook(desk, look({ id: 'old', lookedOn: '2026-05-18', result: 'out' })));
    mustOk(recordLook(desk, look({ id: 'none', lookedOn: '2026-06-03', result: 'not-looked' })));
    expect(open()).toEqual([dueOn]);
    mustOk(recordLook(desk, look({ id: 'none', lookedOn: '2026-06-03', result: 'laying' })));
    expect(open()).toEqual([]);
  });

  test('a box without a cell takes a look too, and a queen born in the year she was found', () => {
    const desk = aDeskWithBoxes(FIRST_LOOK);
    const { row, notices } = mustOk(recordLook(desk, look({ boxId: 'box-9', queen: { id: 'q9', number: '26-001' } })));
    // With a number she is somebody: the box she is in is not free.
    expect([row.state, row.queenNumber, notices]).toEqual(['laying', '26-001', []]);
    expect(desk.workbook.tables.queens.get('q9')).toMatchObject({ bornIn: 2026, batchId: null, placementId: null });
  });

  test('a look belongs to the cell that was in the box on that day', () => {
    const desk = aDeskWithBoxes('2026-06-20');
    mustOk(endPlacement(desk, { placementId: 'placement-1', endedOn: '2026-05-30', reason: 'failed' }));
    aSecondCell(desk, '2026-06-01');
    mustOk(recordLook(desk, look({ id: 'a', lookedOn: '2026-05-30', result: 'none' })));
    mustOk(recordLook(desk, look({ id: 'b', lookedOn: '2026-06-01', result: 'cell' })));
    mustOk(recordLook(desk, look({ id: 'c', lookedOn: '2026-06-19', result: 'laying' })));
    expect(desk.workbook.tables.boxLooks.all().map(({ id, placementId }) => [id, placementId])).toEqual([
      ['a', 'placement-1'],
      ['b', 'second'],
      ['c', 'second'],
    ]);
  });

  test('on the day a box was emptied and filled again, only “cell” is of the new cell, and the row says which it counts for', () => {
    const desk = aDeskWithBoxes('2026-06-20');
    mustOk(endPlacement(desk, { placementId: 'placement-1', endedOn: '2026-06-01', reason: 'caught' }));
    aSecondCell(desk, '2026-06-01');
    const said = (result: LookResult, note: string | null = null) => {
      const { notices } = mustOk(recordLook(desk, look({ lookedOn: '2026-06-01', result, note })));
      const { placementId } = desk.workbook.tables.boxLooks.all()[0] ?? {};
      return [placementId, notices.filter(({ kind }) => kind === 'two-cells-that-day')];
    };
    const notice = (batch: string, which: 'new' | 'earlier') => [
      { kind: 'two-cells-that-day', box: 'K01', batch, which },
    ];
    const newBatch = desk.workbook.tables.batches.get('batch-2')?.code ?? '';
    expect(said('laying')).toEqual(['placement-1', notice('26-01', 'earlier')]);
    expect(said('laying', 'a fine one')).toEqual(['placement-1', notice('26-01', 'earlier')]);
    expect(said('cell')).toEqual(['second', notice(newBatch, 'new')]);
    expect(said('none')).toEqual(['placement-1', notice('26-01', 'earlier')]);
    expect(mustOk(recordLook(desk, look({ id: 'later', lookedOn: '2026-06-19' }))).notices).toEqual([]);
  });

  test('a corrected look that turns out to belong to another batch is taken out of the sums of the first', () => {
    const desk = aDeskWithBoxes('2026-06-20');
    mustOk(recordLook(desk, look({ lookedOn: '2026-06-10' })));
    expect(desk.workbook.tables.tallies.get('batch-1')).toMatchObject({ emerged: 1, laying: 1 });
    mustOk(endPlacement(desk, { placementId: 'placement-1', endedOn: '2026-05-30', reason: 'other' }));
    aSecondCell(desk, '2026-06-01');
    mustOk(recordLook(desk, look({ id: 'x', lookedOn: '2026-06-10', result: 'laying' })));
    const { tables } = desk.workbook;
    for (const batchId of ['batch-1', 'batch-2'])
      expect(tables.tallies.get(batchId)).toEqual(countTally(tables, batchId));
    expect(tables.tallies.get('batch-1')).toMatchObject({ emergenceKnown: 0, laying: 0 });
  });

  test('refuses a number that belongs to another queen, a look before the cell was put in, and a box that is gone', () => {
    const desk = aDeskWithBoxes(FIRST_LOOK);
    const queen = (id: string) => ({ queen: { id, number: '26-001' } });
    mustOk(recordLook(desk, look(queen('q1'))));
    expect(refusalOf(recordLook(desk, look({ id: 'l2', boxId: 'box-2', ...queen('q2') })))).toEqual({
      kind: 'queen-number-taken',
      field: 'queen',
      number: '26-001',
    });
    expect(refusalOf(recordLook(desk, look({ lookedOn: '2026-05-13' })))).toEqual({
      kind: 'look-before-placing',
      field: 'lookedOn',
      placedOn: '2026-05-14',
    });
    expect(refusalOf(recordLook(desk, look({ boxId: 'gone' })))).toMatchObject({ kind: 'box-not-found' });
    expect(desk.workbook.tables.boxLooks.all()).toHaveLength(1);
  });

  test.each([
    ['sealed brood too soon after the cell', { result: 'proved', lookedOn: '2026-05-27' }, 'early-result'],
    ['a virgin past three weeks', { result: 'virgin', lookedOn: '2026-06-08' }, 'late-for-mating'],
    ['a look while queens fly', { result: 'virgin', lookedOn: '2026-05-20' }, 'look-during-hands-off'],
    ['a day to come', { lookedOn: '2026-07-01' }, 'day-in-future'],
  ] as const)('keeps %s, and says so', (_what, changes, kind) => {
    const { notices } = mustOk(recordLook(aDeskWithBoxes('2026-06-20'), look(changes)));
    expect(notices.map((notice) => notice.kind)).toContain(kind);
  });

  test.each([
    // 1 day to emerge, 8 to the first egg, 9 to sealing: sealed brood at 16 days at the soonest, eggs at 7.
    ['proved 16 days after the cell', { result: 'proved', lookedOn: '2026-05-30' }],
    ['laying 7 days after the cell', { result: 'laying', lookedOn: '2026-05-21' }],
    ['out 1 day after the cell', { result: 'out', lookedOn: '2026-05-15' }],
    // Mating should be done within three weeks of emergence [Büchler et al. 2013, sec. 2.2.2].
    ['a virgin of 21 days', { result: 'virgin', lookedOn: '2026-06-06' }],
    ['a proved queen of 25 days', { result: 'proved', lookedOn: '2026-06-10' }],
    ['a look today', { result: 'proved', lookedOn: '2026-06-20' }],
  ] as const)('finds nothing odd in %s', (_what, changes) => {
    const kinds = mustOk(recordLook(aDeskWithBoxes('2026-06-20'), look(changes))).notices.map((one) => one.kind);
    expect(kinds.filter((kind) => kind !== 'look-during-hands-off')).toEqual([]);
  });

  test.each([
    ['2026-05-18', false],
    ['2026-05-19', true],
    ['2026-05-26', true],
    ['2026-05-27', false],
  ])('on %s the boxes are hands off: %s', (lookedOn, handsOff) => {
    const { notices } = mustOk(recordLook(aDeskWithBoxes('2026-06-20'), look({ lookedOn, result: 'out' })));
    expect(notices.some((notice) => notice.kind === 'look-during-hands-off')).toBe(handsOff);
    const notLooked = look({ id: 'n', boxId: 'box-2', lookedOn, result: 'not-looked' });
    expect(mustOk(recordLook(aDeskWithBoxes('2026-06-20'), notLooked)).notices).toEqual([]);
  });
});
