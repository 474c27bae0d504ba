import type { CalendarExport } from '../../../shared/model/calendar-export.ts';
import { flag, plain, type TableShape } from './define-table.ts';

export const calendarExportTable: TableShape<CalendarExport> = {
  name: 'calendar_export',
  columns: {
    id: plain('id'),
    batchId: plain('batch_id'),
    sequence: plain('sequence'),
    fromOn: plain('from_on'),
    toOn: plain('to_on'),
    summary: plain('summary'),
    location: plain('location'),
    category: plain('category'),
    alarm: plain('alarm'),
    cancelled: flag('cancelled'),
    exportedOn: plain('exported_on'),
  },
};
