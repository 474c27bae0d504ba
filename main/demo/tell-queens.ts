import { addDays, dayOfIso, isoOfDay } from '../../shared/kernel/day.ts';
import type { Queen } from '../../shared/model/queen.ts';
import type { FeedbackOutcome, IntroductionWay } from '../../shared/model/queen-story.ts';
import type { Desk } from '../operations/operation.ts';
import { moveQueen } from '../operations/queens/move-queen.ts';
import { promiseQueen } from '../operations/queens/promise-queen.ts';
import { recordFeedback } from '../operations/queens/record-feedback.ts';
import { answerFollowUp } from '../operations/today/answer-follow-up.ts';
import { HELD_DAY } from './story.ts';
import { hiveId, need } from './story-needs.ts';

/** Queens of ours that came to head a hive: who is picked by the breeder and year of her batch. */
const BROUGHT_IN = [
  { season: 2024, breeder: 'H03', hive: 'H03', on: '2024-08-12', way: 'candy-cage' },
  { season: 2024, breeder: 'H07', hive: 'H12', on: '2024-08-20', way: 'push-in-cage' },
  { season: 2025, breeder: 'H03', hive: 'H15', on: '2025-08-05', way: 'small-colony' },
  { season: 2025, breeder: 'H07', hive: 'H09', on: '2026-05-14', way: 'candy-cage' },
  // H12 was slow again: its old queen is gone, and the new one sits in her cage on the held day.
  { season: 2025, breeder: 'H07', hive: 'H12', on: '2026-05-19', way: 'candy-cage' },
] as const satisfies readonly {
  season: number;
  breeder: string;
  hive: string;
  on: string;
  way: IntroductionWay;
}[];

const FEEDBACK: Readonly<Record<string, readonly (readonly [FeedbackOutcome, string])[]>> = {
  given: [
    ['lays-well', 'Full brood nest in July, calm.'],
    ['superseded', 'Another queen by August; her colony is fine.'],
  ],
  sold: [
    ['lays-well', 'Wintered on six combs.'],
    ['not-accepted', 'Found dead in the cage on day three.'],
    ['lays-well', 'Asks for two more.'],
  ],
};

/** Tells what became of the queens of past seasons: who came to head a hive, and what receivers told. */
export function tellQueens(desk: Desk): void {
  const taken = new Set<string>();
  for (const { season, breeder, hive, on, way } of BROUGHT_IN) {
    const queen = pick(desk, season, breeder, taken);
    taken.add(queen.id);
    removeOld(desk, hive, on);
    bringIn({ ...desk, today: dayOfIso(HELD_DAY) }, queen, hive, on, way);
  }
  tellFeedback(desk);
  tellPromise(desk);
}

/** A queen that wintered well is kept for the club, who asked for some by a day. */
function tellPromise(desk: Desk): void {
  const { queens } = desk.workbook.tables;
  const queen = queens.where({ bornIn: 2025, place: 'in-hive' }).find(({ note }) => note === 'Wintered on five combs.');
  if (!queen) throw new Error('no queen of last year to promise');
  const promise = {
    promisedOn: '2026-05-17',
    promisedTo: 'Club apiary',
    wantedOn: null,
    note: 'Wintered well, very calm.',
  };
  need(promiseQueen(desk, { id: 'demo-promise-club', queenId: queen.id, ...promise }));
}

function pick({ workbook }: Desk, season: number, breeder: string, taken: ReadonlySet<string>): Queen {
  const found = workbook.tables.queens
    .where({ bornIn: season, breederId: hiveId(breeder) })
    .find((queen) => queen.place === 'in-hive' && !taken.has(queen.id));
  if (!found) throw new Error(`no queen of ${season} from ${breeder}`);
  return found;
}

function bringIn(desk: Desk, queen: Queen, hive: string, movedOn: string, way: IntroductionWay): void {
  const move = { id: desk.ids.next(), queenId: queen.id, movedOn, place: 'in-hive' as const, way };
  need(moveQueen(desk, { ...move, colonyId: hiveId(hive), goneTo: null, price: null, note: null }));
  for (const check of desk.workbook.tables.followUps.where({ queenId: queen.id, doneOn: null })) {
    if (check.dueOn >= HELD_DAY) continue;
    need(answerFollowUp(desk, { followUpId: check.id, doneOn: check.dueOn, answer: 'well', note: null }));
  }
}

/** The queen that headed the hive until now is dead by the day another is brought in. */
function removeOld(desk: Desk, hive: string, movedOn: string): void {
  const old = desk.workbook.tables.queens.where({ colonyId: hiveId(hive), place: 'in-hive' })[0];
  if (!old) return;
  const nowhere = { colonyId: null, goneTo: null, way: null, price: null, note: 'Too slow in spring.' };
  const today = dayOfIso(HELD_DAY);
  need(moveQueen({ ...desk, today }, { id: desk.ids.next(), queenId: old.id, movedOn, place: 'dead', ...nowhere }));
}

const WEEKS_TO_FEEDBACK = 8;

function tellFeedback(desk: Desk): void {
  for (const [place, told] of Object.entries(FEEDBACK)) {
    const gone = desk.workbook.tables.queens.where({ place: place as Queen['place'] });
    told.forEach(([outcome, note], index) => {
      const queen = gone[index];
      const since = queen?.provedOn;
      if (!queen || !since) return;
      const toldOn = isoOfDay(addDays(dayOfIso(since), WEEKS_TO_FEEDBACK * 7));
      need(
        recordFeedback(desk, { id: desk.ids.next(), queenId: queen.id, toldOn, toldBy: queen.goneTo, outcome, note }),
      );
    });
  }
}
