import type { WholeProblem } from '../../../shared/contract/import.ts';
import type { WholeWorkbook } from '../../../shared/contract/whole-workbook.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { WHOLE_KEYS } from './whole-workbook.ts';

type Key = (typeof WHOLE_KEYS)[number];
type Row = { readonly id: string } & Readonly<Record<string, unknown>>;

/** Fields that name a row of another table, as the file’s own rules have it (compared with them in the tests). */
export const POINTERS: Readonly<Partial<Record<Key, Readonly<Record<string, Key>>>>> = {
  colonies: { yardId: 'yards' },
  colonyRoles: { colonyId: 'colonies' },
  batches: { methodCopyId: 'methodCopies', breederId: 'colonies', builderId: 'colonies' },
  bars: { batchId: 'batches' },
  counts: { batchId: 'batches', barId: 'bars' },
  stepsDone: { batchId: 'batches' },
  stepMoves: { batchId: 'batches' },
  stepDrops: { batchId: 'batches' },
  losses: { batchId: 'batches' },
  observations: { batchId: 'batches' },
  boxes: { yardId: 'yards' },
  placements: { boxId: 'boxes', batchId: 'batches', barId: 'bars' },
  boxLooks: { boxId: 'boxes', placementId: 'placements' },
  hiveLooks: { colonyId: 'colonies' },
  queens: {
    placementId: 'placements',
    batchId: 'batches',
    breederId: 'colonies',
    boxId: 'boxes',
    colonyId: 'colonies',
    motherId: 'queens',
  },
  queenMoves: { queenId: 'queens', colonyId: 'colonies' },
  queenFeedback: { queenId: 'queens' },
  queenPromises: { queenId: 'queens' },
  followUps: { queenId: 'queens', boxId: 'boxes', colonyId: 'colonies' },
  stockScores: { colonyId: 'colonies' },
  stockTests: { colonyId: 'colonies' },
  feedings: { colonyId: 'colonies', boxId: 'boxes' },
  treatments: { colonyId: 'colonies' },
  colonyMoves: { colonyId: 'colonies', fromYardId: 'yards', toYardId: 'yards' },
  labelPrints: { placementId: 'placements' },
};

/** What no two rows of a table may share; the last field is the one that is named. */
export const OWN: Readonly<Partial<Record<Key, readonly string[]>>> = {
  yards: ['name'],
  colonies: ['code'],
  colonyRoles: ['colonyId', 'season', 'role'],
  batches: ['code'],
  bars: ['batchId', 'number'],
  counts: ['barId', 'stage'],
  stepsDone: ['batchId', 'step'],
  stepMoves: ['batchId', 'step'],
  stepDrops: ['batchId', 'step'],
  losses: ['batchId', 'stage', 'reason'],
  boxes: ['code'],
  queens: ['number'],
  stockScores: ['colonyId', 'trait', 'scoredOn'],
  weather: ['day'],
};

const SHOWN_SIGNS = 40;

/** Rows that point nowhere or want what another row has, in the file or in the workbook. */
export function wholeProblems(tables: Tables, { tables: given }: WholeWorkbook): readonly WholeProblem[] {
  const rowsOf = (key: Key) => given[key] as unknown as readonly Row[];
  const ids = new Map(WHOLE_KEYS.map((key) => [key, new Set(rowsOf(key).map(({ id }) => id))]));
  const exists = (key: Key, id: string) => ids.get(key)?.has(id) === true || tables[key].get(id) !== null;
  return WHOLE_KEYS.flatMap((key) => {
    const seen = new Set<string>();
    const there = ownersIn(tables, key);
    return rowsOf(key).flatMap((row, index) => {
      const problem = (kind: WholeProblem['kind'], field: string): WholeProblem => ({
        table: key,
        row: index + 1,
        kind,
        field,
        text: String(row[field]).slice(0, SHOWN_SIGNS),
      });
      const nowhere = Object.entries(POINTERS[key] ?? {}).filter(
        ([field, target]) => row[field] !== null && !exists(target, String(row[field])),
      );
      const idTwice = seen.has(`id ${row.id}`);
      seen.add(`id ${row.id}`);
      return [
        ...nowhere.map(([field]) => problem('points-nowhere', field)),
        ...(idTwice ? [problem('twice', 'id')] : []),
        ...claims(key, row).flatMap(([claim, field]) => {
          const twice = seen.has(claim);
          seen.add(claim);
          if (twice) return [problem('twice', field)];
          const owner = there.get(claim);
          return owner !== undefined && owner !== row.id ? [problem('taken', field)] : [];
        }),
      ];
    });
  });
}

/** What a row has for itself alone, and the field by which it is told. */
function claims(key: Key, row: Row): readonly (readonly [claim: string, field: string])[] {
  const fields = OWN[key] ?? [];
  const own = fields.map((field) => String(row[field])).join(' | ');
  const held = key === 'placements' && row.endedOn === null ? [[`held ${String(row.boxId)}`, 'boxId'] as const] : [];
  return [...(fields.length === 0 ? [] : [[`own ${own}`, fields.at(-1) ?? ''] as const]), ...held];
}

function ownersIn(tables: Tables, key: Key): ReadonlyMap<string, string> {
  const rows = tables[key].all() as unknown as readonly Row[];
  return new Map(rows.flatMap((row) => claims(key, row).map(([claim]) => [claim, row.id] as const)));
}
