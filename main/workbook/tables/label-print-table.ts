import type { LabelPrint } from '../../../shared/model/label-print.ts';
import { plain, type TableShape } from './define-table.ts';

export const labelPrintTable: TableShape<LabelPrint> = {
  name: 'label_print',
  columns: {
    id: plain('id'),
    placementId: plain('placement_id'),
    printedOn: plain('printed_on'),
    words: plain('words'),
  },
};
