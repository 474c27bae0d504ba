import type { QueenFeedback } from '../../../shared/model/queen-story.ts';
import { plain, type TableShape } from './define-table.ts';

export const queenFeedbackTable: TableShape<QueenFeedback> = {
  name: 'queen_feedback',
  columns: {
    id: plain('id'),
    queenId: plain('queen_id'),
    toldOn: plain('told_on'),
    toldBy: plain('told_by'),
    outcome: plain('outcome'),
    note: plain('note'),
  },
};
