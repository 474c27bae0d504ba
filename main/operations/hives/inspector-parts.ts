import type { HiveMoveLine } from '../../../shared/contract/stock.ts';
import { compareCodes } from '../../../shared/kernel/box-codes.ts';
import type { IsoDay } from '../../../shared/kernel/day.ts';
import type { Colony } from '../../../shared/model/colony.ts';
import type { Treatment } from '../../../shared/model/hive-record.ts';
import type { QueenMove } from '../../../shared/model/queen-story.ts';
import type { Words } from '../../../shared/text/english/english.ts';
import type { FlowTable } from '../../paper/flowing-table.ts';
import type { Tables } from '../../workbook/workbook.ts';
import type { OfHive, Writing } from './hive-paper-tables.ts';
import { type StockOfYear, stockOfYear } from './stock-paper-tables.ts';

interface InspectedHive {
  readonly colony: Colony;
  readonly yard: string | null;
  readonly lastLook: IsoDay | null;
  readonly stock: StockOfYear;
}

interface QueenWent {
  readonly move: QueenMove;
  readonly number: string;
  readonly hive: string | null;
}

/** What the workbook holds of one year and one yard (or all), each list by day. */
export interface InspectedYear {
  readonly hives: readonly InspectedHive[];
  readonly treatments: readonly OfHive<Treatment>[];
  readonly moves: readonly OfHive<HiveMoveLine>[];
  readonly queens: readonly QueenWent[];
}

export function inspectedYear(tables: Tables, yardId: string | null, year: number): InspectedYear {
  const [first, last] = [`${year}-01-01`, `${year}-12-31`];
  const within = (day: IsoDay) => first <= day && day <= last;
  const yardName = (id: string | null) => (id === null ? null : (tables.yards.get(id)?.name ?? null));
  const passedThrough = (colonyId: string) =>
    tables.colonyMoves
      .where({ colonyId })
      .some((move) => within(move.movedOn) && (move.fromYardId === yardId || move.toYardId === yardId));
  const colonies = tables.colonies
    .all()
    .filter(({ endedOn }) => endedOn === null || endedOn >= first)
    .filter((colony) => yardId === null || colony.yardId === yardId || passedThrough(colony.id))
    .toSorted((a, b) => compareCodes(a.code, b.code));
  return {
    hives: colonies.map((colony) => ({
      colony,
      yard: yardName(colony.yardId),
      lastLook: lastLook(tables, colony.id, within),
      stock: stockOfYear(tables, colony.id, within),
    })),
    treatments: colonies
      .flatMap(({ id, code }) => tables.treatments.where({ colonyId: id }).map((row) => ({ hive: code, row })))
      .filter(({ row }) => row.fromOn <= last && (row.toOn ?? row.fromOn) >= first)
      .toSorted((a, b) => (a.row.fromOn < b.row.fromOn ? -1 : 1)),
    moves: colonies
      .flatMap(({ id, code }) => tables.colonyMoves.where({ colonyId: id }).map((row) => ({ hive: code, row })))
      .filter(({ row }) => within(row.movedOn))
      .map(({ hive, row }) => ({ hive, row: { ...row, from: yardName(row.fromYardId), to: yardName(row.toYardId) } }))
      .toSorted((a, b) => (a.row.movedOn < b.row.movedOn ? -1 : 1)),
    queens: queensWent(tables, colonies, yardId, within),
  };
}

const lastLook = (tables: Tables, colonyId: string, within: (day: IsoDay) => boolean): IsoDay | null =>
  tables.hiveLooks
    .where({ colonyId })
    .map(({ lookedOn }) => lookedOn)
    .filter(within)
    .toSorted()
    .at(-1) ?? null;

/** Queens brought to these hives; with all yards, also those given, sold, dead or lost. */
function queensWent(
  tables: Tables,
  colonies: readonly Colony[],
  yardId: string | null,
  within: (day: IsoDay) => boolean,
): readonly QueenWent[] {
  const codes = new Map(colonies.map(({ id, code }) => [id, code]));
  return tables.queenMoves
    .all()
    .filter((move) => within(move.movedOn) && (yardId === null || codes.has(move.colonyId ?? '')))
    .toSorted((a, b) => (a.movedOn < b.movedOn ? -1 : 1))
    .map((move) => ({
      move,
      number: tables.queens.get(move.queenId)?.number ?? '',
      hive: move.colonyId === null ? null : (codes.get(move.colonyId) ?? null),
    }));
}

export function hivesTable({ hives }: InspectedYear, writing: Writing): FlowTable {
  const { columns } = writing;
  return {
    columns: [columns.hive, columns.yard, columns.place, columns.lastLook, columns.ended].map((title) => ({ title })),
    rows: hives.map(({ colony, yard, lastLook: looked }) => [
      colony.code,
      writing.orBlank(yard),
      writing.orBlank(colony.place),
      writing.dayOrBlank(looked),
      colony.endedOn === null ? '' : writing.day(colony.endedOn),
    ]),
  };
}

export function queensTable({ queens }: InspectedYear, places: Words['queens']['places'], writing: Writing): FlowTable {
  const { columns } = writing;
  return {
    columns: [columns.day, columns.queen, columns.what, columns.to].map((title) => ({ title })),
    rows: queens.map(({ move, number, hive }) => [
      writing.day(move.movedOn),
      number,
      places[move.place],
      writing.orBlank(hive ?? move.goneTo),
    ]),
  };
}

/** Each kind of line that has a gap, with the hives, days or queens it concerns. */
export function gapLines({ hives, treatments, moves, queens }: InspectedYear, writing: Writing): readonly string[] {
  const hive = ({ colony }: InspectedHive) => colony.code;
  const treated = ({ hive: code, row }: OfHive<Treatment>) => `${code} ${writing.day(row.fromOn)}`;
  const moved = ({ hive: code, row }: OfHive<HiveMoveLine>) => `${code} ${writing.day(row.movedOn)}`;
  const gone = queens.filter(({ move }) => (move.place === 'given' || move.place === 'sold') && move.goneTo === null);
  const { words } = writing;
  const { gaps } = words;
  const found: readonly (readonly [string, readonly string[]])[] = [
    [gaps.looks, hives.filter(({ lastLook: looked }) => looked === null).map(hive)],
    [gaps.mites, hives.filter(({ stock }) => stock.mites === null).map(hive)],
    [gaps.place, hives.filter(({ yard }) => yard === null).map(hive)],
    [gaps.amount, treatments.filter(({ row }) => !row.amount).map(treated)],
    [gaps.end, treatments.filter(({ row }) => row.toOn === null).map(treated)],
    [gaps.product, treatments.filter(({ row }) => !row.paper).map(treated)],
    [gaps.route, moves.filter(({ row }) => row.from === null || row.to === null).map(moved)],
    [gaps.permit, moves.filter(({ row }) => !row.paper).map(moved)],
    [gaps.receiver, gone.map(({ number }) => number)],
  ];
  return found.flatMap(([what, where]) => (where.length === 0 ? [] : [words.gap(what, where.join(', '))]));
}
