import { expect, test } from 'vitest';
import { isoOfDay } from '../../../../shared/kernel/day.ts';
import { contradictionSentence } from '../../../../shared/text/english/contradictions.ts';
import { aSighting, day, timetableOf } from '../../../builders/calendar.ts';

test('both sources are named with their days', () => {
  const seen = [aSighting({ what: 'cells-open', on: day('2026-05-17') })];
  const [contradiction] = timetableOf({ seen }).contradictions;
  if (!contradiction) throw new Error('these facts should exclude each other');
  expect(contradictionSentence(contradiction, isoOfDay)).toMatch(
    /larvae of 12 to 24 hours on 2026-05-10; and cells still open, seen 2026-05-17\./,
  );
});
