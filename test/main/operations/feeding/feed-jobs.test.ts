import { describe, expect, test } from 'vitest';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { feedSeveral } from '../../../../main/operations/feeding/feed-several.ts';
import { recordFeeding } from '../../../../main/operations/feeding/record-feeding.ts';
import { undo } from '../../../../main/operations/history/undo.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { typedFeeding } from '../../../builders/feeding.ts';
import { aStart, onDay } from '../../../builders/running-batch.ts';

/** Larvae on 4 May on drawn comb: the breeder is fed 8 to 5 days before, 26 to 29 April (common practice, no source). */
function aDeskAhead() {
  const desk = aDesk({ today: '2026-04-27' });
  mustOk(startBatch(desk, aStart()));
  const fed = (placeId: string, fedOn: string, today = '2026-04-29') =>
    mustOk(recordFeeding(onDay(desk, today), { ...typedFeeding, id: `${placeId} ${fedOn}`, placeId, fedOn })).notices;
  return { desk, fed, marked: () => desk.workbook.tables.stepsDone.all() };
}
const SAID = [{ kind: 'feed-job-done', batch: '26-01' }];

describe('the feeding of a hive', () => {
  test('marks the job to begin feeding as done on that day, once, and is taken back with it', () => {
    const { desk, fed, marked } = aDeskAhead();
    expect(fed('h03', '2026-04-27')).toEqual(SAID);
    expect(marked()).toMatchObject([{ batchId: 'batch-1', step: 'feed-start', doneOn: '2026-04-27' }]);
    expect(fed('h03', '2026-04-28')).toEqual([]);
    expect(marked()).toHaveLength(1);
    mustOk(undo(desk));
    mustOk(undo(desk));
    expect([marked(), desk.workbook.tables.feedings.all()]).toEqual([[], []]);
  });

  test('marks it also when several are fed at once', () => {
    const { desk, marked } = aDeskAhead();
    const { fedOn: _fedOn, id: _id, place: _place, placeId: _placeId, ...feed } = typedFeeding;
    const several = { ...feed, places: 'H03', fedOn: '2026-04-27', ids: ['one'] };
    expect(mustOk(feedSeveral(desk, several)).notices).toEqual(SAID);
    expect(marked()).toHaveLength(1);
  });

  test.each([
    ['another hive', 'h12', '2026-04-27'],
    ['a day before the window', 'h03', '2026-04-25'],
    ['a day after it', 'h03', '2026-04-30'],
  ])('marks nothing for %s', (_what, hive, on) => {
    const { fed, marked } = aDeskAhead();
    expect([fed(hive, on, '2026-04-30'), marked()]).toEqual([[], []]);
  });
});
