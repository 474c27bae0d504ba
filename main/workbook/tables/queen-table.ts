import type { Queen } from '../../../shared/model/queen.ts';
import { plain, type TableShape } from './define-table.ts';

export const queenTable: TableShape<Queen> = {
  name: 'queen',
  columns: {
    id: plain('id'),
    number: plain('number'),
    bornIn: plain('born_in'),
    placementId: plain('placement_id'),
    batchId: plain('batch_id'),
    breederId: plain('breeder_id'),
    motherId: plain('mother_id'),
    motherLine: plain('mother_line'),
    markedOn: plain('marked_on'),
    firstEggsOn: plain('first_eggs_on'),
    provedOn: plain('proved_on'),
    place: plain('place'),
    boxId: plain('box_id'),
    colonyId: plain('colony_id'),
    goneTo: plain('gone_to'),
    note: plain('note'),
  },
};
