import type { z } from 'zod';
import type { AnswerFollowUp, FollowUpLine } from '../../../shared/contract/follow-ups.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { dayOfIso } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { FollowUp } from '../../../shared/model/follow-up.ts';
import type { Queen } from '../../../shared/model/queen.ts';
import { checkAgain } from '../../engine/queens/introduction-checks.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { followUpLine } from '../follow-up-lines.ts';
import type { Desk } from '../operation.ts';
import { addChecks, writeQueenMove } from '../queen-moves.ts';

type Answer = z.infer<typeof AnswerFollowUp>;

/**
 * What a check showed. "Not yet" asks for another one a few days on; "gone" takes the queen out of the hive, and the
 * checks that would have come go with her.
 */
export function answerFollowUp(desk: Desk, input: Answer): Result<FollowUpLine, Refusal> {
  const followUp = desk.workbook.tables.followUps.get(input.followUpId);
  if (!followUp) return refuse({ kind: 'follow-up-missing' });
  const { queen: about, box } = followUpLine(desk.workbook.tables, followUp, desk.today);
  const words = { did: 'answer-follow-up', what: followUp.what, who: about?.number ?? box?.code ?? '' } as const;
  return desk.workbook.change(words, (tables) => {
    const queen = followUp.queenId === null ? null : tables.queens.get(followUp.queenId);
    const broughtOn = queen ? lastMoveOn(tables, queen) : null;
    if (broughtOn !== null && input.doneOn < broughtOn)
      return refuse({ kind: 'answered-before-move', field: 'doneOn', movedOn: broughtOn });
    const { doneOn, answer, note } = input;
    const done: FollowUp = { ...followUp, doneOn, answer, note };
    tables.followUps.update(done);
    if (queen) follow(desk, tables, queen, done, input);
    return ok(followUpLine(tables, done, desk.today));
  });
}

const lastMoveOn = (tables: Tables, queen: Queen): string | null =>
  tables.queenMoves
    .where({ queenId: queen.id })
    .map((move) => move.movedOn)
    .toSorted()
    .at(-1) ?? null;

function follow(desk: Desk, tables: Tables, queen: Queen, { what }: FollowUp, { answer, doneOn, note }: Answer): void {
  if (answer === 'not-yet') addChecks(tables, desk.ids, queen, [checkAgain(what, dayOfIso(doneOn))]);
  if (answer !== 'gone') return;
  const nowhere = { colonyId: null, goneTo: null, way: null, price: null };
  const id = desk.ids.next();
  writeQueenMove(tables, desk.ids, queen, { id, queenId: queen.id, movedOn: doneOn, place: 'lost', note, ...nowhere });
}
