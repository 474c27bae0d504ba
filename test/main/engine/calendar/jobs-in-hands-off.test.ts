import { describe, expect, test } from 'vitest';
import { jobsInHandsOff } from '../../../../main/engine/calendar/jobs-in-hands-off.ts';
import type { PlannedBatch } from '../../../../shared/model/clash.ts';
import type { CalendarInput } from '../../../../shared/model/timetable.ts';
import { day, timetableOf } from '../../../builders/calendar.ts';

const batch = (
  id: string,
  givenOn: string,
  hives: Pick<PlannedBatch, 'builderId' | 'breederId'>,
  input: Partial<CalendarInput> = {},
): PlannedBatch => ({
  id,
  timetable: timetableOf({ anchor: { step: 'give-larvae', on: day(givenOn) }, ...input }),
  ...hives,
  cells: 10,
  barIds: [],
});
const BUILDS = { builderId: 'H12', breederId: 'H03' };
const FEEDS = { builderId: 'H20', breederId: 'H12' };

describe('jobs on a breeder that builds for another batch', () => {
  // a: larvae on 10 May, hands off 16 to 18 May. b: comb into the breeder four days before its larvae.
  const building = batch('a', '2026-05-10', BUILDS);

  test.each([
    ['2026-05-19', []],
    ['2026-05-20', [['2026-05-16', '2026-05-18', ['2026-05-15', '2026-05-19']]]],
    ['2026-05-22', [['2026-05-18', '2026-05-18', ['2026-05-19', '2026-05-15']]]],
    ['2026-05-23', []],
  ] as const)('larvae on %s', (givenOn, expected) => {
    const found = jobsInHandsOff([building, batch('b', givenOn, FEEDS)]).flatMap((clash) =>
      clash.kind === 'job-in-hands-off' && clash.step === 'insert-frame' ? [clash] : [],
    );
    expect(found.map(({ on, until, alternatives }) => [on, until, alternatives])).toEqual(
      expected.map(([on, until, alternatives]) => [day(on), day(until), alternatives.map(day)]),
    );
  });

  test('its own quiet days are no clash, nor those of a hive it does not use, nor a job that is done', () => {
    // A comb put off into the batch's own quiet days is a matter of its own timetable.
    const own = batch(
      'a',
      '2026-05-10',
      { builderId: 'H12', breederId: 'H12' },
      {
        done: [{ step: 'give-larvae', on: day('2026-05-10') }],
        moved: [{ step: 'insert-frame', to: day('2026-05-17'), reason: '' }],
      },
    );
    expect(jobsInHandsOff([own])).toEqual([]);
    expect(jobsInHandsOff([building, batch('b', '2026-05-20', { ...FEEDS, breederId: 'H30' })])).toEqual([]);
    const done = { done: [{ step: 'insert-frame', on: day('2026-05-16') }] } as const;
    const steps = jobsInHandsOff([building, batch('b', '2026-05-20', FEEDS, done)]).map(
      (clash) => 'step' in clash && clash.step,
    );
    expect(steps).not.toContain('insert-frame');
  });
});
