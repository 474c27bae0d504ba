import type { Colony } from '../../../shared/model/colony.ts';
import { plain, type TableShape } from './define-table.ts';

export const colonyTable: TableShape<Colony> = {
  name: 'colony',
  columns: {
    id: plain('id'),
    code: plain('code'),
    name: plain('name'),
    yardId: plain('yard_id'),
    place: plain('place'),
    motherLine: plain('mother_line'),
    note: plain('note'),
    endedOn: plain('ended_on'),
  },
};
