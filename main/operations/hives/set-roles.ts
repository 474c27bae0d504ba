import type { z } from 'zod';
import type { SetRoles } from '../../../shared/contract/hives.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { ColonyRole } from '../../../shared/model/colony.ts';
import type { Tables } from '../../workbook/workbook.ts';
import type { Desk } from '../operation.ts';

/** What a hive is used for in one season; other seasons keep their roles. */
export function setRoles(desk: Desk, input: z.infer<typeof SetRoles>): Result<readonly ColonyRole[], Refusal> {
  const { colonyId, season } = input;
  const step = ({ colonies }: Tables) =>
    ({ did: 'set-roles', hive: colonies.get(colonyId)?.code ?? '', season }) as const;
  return desk.workbook.change(step, ({ colonies, colonyRoles }) => {
    if (!colonies.get(colonyId)) return refuse({ kind: 'hive-missing', field: 'colonyId' });
    const roles = [...new Set(input.roles)];
    for (const known of colonyRoles.where({ colonyId, season }))
      if (!roles.includes(known.role)) colonyRoles.remove(known.id);
    roles.forEach((role, index) => {
      if (colonyRoles.where({ colonyId, season, role }).length > 0) return;
      colonyRoles.insert({ id: input.ids[index] ?? desk.ids.next(), colonyId, season, role });
    });
    return ok(colonyRoles.where({ colonyId, season }));
  });
}
