import type { FollowUp } from '../../../shared/model/follow-up.ts';
import { plain, type TableShape } from './define-table.ts';

export const followUpTable: TableShape<FollowUp> = {
  name: 'follow_up',
  columns: {
    id: plain('id'),
    what: plain('what'),
    dueOn: plain('due_on'),
    latestOn: plain('latest_on'),
    queenId: plain('queen_id'),
    boxId: plain('box_id'),
    colonyId: plain('colony_id'),
    doneOn: plain('done_on'),
    answer: plain('answer'),
    note: plain('note'),
  },
};
