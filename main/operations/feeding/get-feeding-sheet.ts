import type { z } from 'zod';
import type { FeedingRow, FeedingSheet, FeedingSheetView } from '../../../shared/contract/feeding.ts';
import { compareCodes } from '../../../shared/kernel/box-codes.ts';
import { isoOfDay } from '../../../shared/kernel/day.ts';
import type { Feeding } from '../../../shared/model/feeding.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { handsOffOn, runningBatches } from '../hands-off.ts';
import type { Desk } from '../operation.ts';
import { quietHives } from '../quiet-hives.ts';

type Asked = z.infer<typeof FeedingSheet>;
type Place = Omit<FeedingRow, 'last' | 'typed'>;

/** The rows of an evening's feeding: hives yard by yard and by code, boxes in walking order. */
export function getFeedingSheet(desk: Desk, asked: Asked): FeedingSheetView {
  const { tables } = desk.workbook;
  const places = asked.places === 'hives' ? hivesOf(desk, asked.yardId) : boxesOf(tables, asked.yardId);
  return {
    sheetDay: asked.sheetDay,
    rows: places.map((place) => ({ ...place, ...fedThere(tables, place.id, asked) })),
  };
}

function hivesOf({ workbook: { tables }, today }: Desk, yardId: string | null): readonly Place[] {
  const shut = new Map<string, string>();
  for (const { span, colonyId } of handsOffOn(runningBatches(tables, today), today))
    if (colonyId !== null) shut.set(colonyId, isoOfDay(span.to));
  for (const { id, until } of quietHives(tables, today)) shut.set(id, until);
  return tables.colonies
    .all()
    .filter((colony) => colony.endedOn === null && (yardId === null || colony.yardId === yardId))
    .map(({ id, code, name, yardId: yard, place }) => ({
      id,
      code,
      name,
      where: said(yardName(tables, yard), place),
      handsOffUntil: shut.get(id) ?? null,
    }))
    .toSorted((a, b) => compareCodes(a.where[0] ?? '', b.where[0] ?? '') || compareCodes(a.code, b.code));
}

const boxesOf = (tables: Tables, yardId: string | null): readonly Place[] =>
  tables.boxes
    .where({ retiredOn: null })
    .filter((box) => yardId === null || box.yardId === yardId)
    .toSorted((a, b) => a.walkOrder - b.walkOrder)
    .map(({ id, code, yardId: yard, row }) => ({
      id,
      code,
      name: null,
      where: said(yardName(tables, yard), row),
      handsOffUntil: null,
    }));

const yardName = (tables: Tables, id: string | null) => (id === null ? null : (tables.yards.get(id)?.name ?? null));
const said = (...parts: readonly (string | null)[]) => parts.filter((part) => part !== null && part !== '') as string[];

function fedThere(
  tables: Tables,
  id: string,
  { places, sheetDay, feed, ownFeed }: Asked,
): Pick<FeedingRow, 'last' | 'typed'> {
  const all = tables.feedings.where(places === 'hives' ? { colonyId: id } : { boxId: id }).toSorted(byDay);
  const isAsked = (one: Feeding) => one.feed === feed && (feed !== 'other' || one.ownFeed === (ownFeed ?? ''));
  return {
    last: all.findLast(({ fedOn }) => fedOn < sheetDay) ?? null,
    typed: all.findLast((one) => one.fedOn === sheetDay && isAsked(one)) ?? null,
  };
}

const byDay = (a: Feeding, b: Feeding): number => (a.fedOn < b.fedOn ? -1 : 1);
