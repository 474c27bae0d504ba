import { MethodCopy } from '../../../shared/model/method-copy.ts';
import { json, plain, type TableShape } from './define-table.ts';

export const methodCopyTable: TableShape<MethodCopy> = {
  name: 'method_copy',
  columns: {
    id: plain('id'),
    origin: plain('origin'),
    name: plain('name'),
    changes: json('changes', (value) => MethodCopy.shape.changes.parse(value)),
  },
};
