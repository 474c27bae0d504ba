import type { ColonyRole } from '../../../shared/model/colony.ts';
import { plain, type TableShape } from './define-table.ts';

export const colonyRoleTable: TableShape<ColonyRole> = {
  name: 'colony_role',
  columns: {
    id: plain('id'),
    colonyId: plain('colony_id'),
    season: plain('season'),
    role: plain('role'),
  },
};
