import type { Observation } from '../../../shared/model/observation.ts';
import { plain, type TableShape } from './define-table.ts';

export const observationTable: TableShape<Observation> = {
  name: 'observation',
  columns: {
    id: plain('id'),
    batchId: plain('batch_id'),
    what: plain('what'),
    seenOn: plain('seen_on'),
    fromHours: plain('from_hours'),
    toHours: plain('to_hours'),
    note: plain('note'),
  },
};
