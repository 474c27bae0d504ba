import { describe, expect, test } from 'vitest';
import { recordLook } from '../../../../main/operations/boxes/record-look.ts';
import type { LookResult } from '../../../../shared/model/look.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBoxes, refusalOf } from '../../../builders/running-batch.ts';

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
});
