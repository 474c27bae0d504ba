import type { Batch } from '../../../shared/model/batch.ts';
import { flag, plain, type TableShape } from './define-table.ts';

export const batchTable: TableShape<Batch> = {
  name: 'batch',
  columns: {
    id: plain('id'),
    code: plain('code'),
    season: plain('season'),
    method: plain('method'),
    methodCopyId: plain('method_copy_id'),
    comb: plain('comb'),
    builderType: plain('builder_type'),
    breederId: plain('breeder_id'),
    builderId: plain('builder_id'),
    anchorStep: plain('anchor_step'),
    anchorOn: plain('anchor_on'),
    larvaAgeFromHours: plain('larva_age_from_hours'),
    larvaAgeToHours: plain('larva_age_to_hours'),
    sealedCelsius: plain('sealed_celsius'),
    cellsPlanned: plain('cells_planned'),
    practice: flag('practice'),
    note: plain('note'),
    lesson: plain('lesson'),
    closedOn: plain('closed_on'),
  },
};
