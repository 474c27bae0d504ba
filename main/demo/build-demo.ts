import { readBoxCodes } from '../../shared/kernel/box-codes.ts';
import { addDays, dayOfIso, isoOfDay, yearOfDay } from '../../shared/kernel/day.ts';
import { addBoxes } from '../operations/boxes/add-boxes.ts';
import { recordHiveLook } from '../operations/hives/record-hive-look.ts';
import { saveHive } from '../operations/hives/save-hive.ts';
import { saveYard } from '../operations/hives/save-yard.ts';
import { setRoles } from '../operations/hives/set-roles.ts';
import type { Desk } from '../operations/operation.ts';
import { saveQueen } from '../operations/queens/save-queen.ts';
import { saveWish } from '../operations/season/save-wish.ts';
import { saveSettings } from '../operations/settings/save-settings.ts';
import { saveWeather } from '../operations/weather/save-weather.ts';
import { Chance } from './chance.ts';
import {
  BOXES,
  HELD_DAY,
  HIVES,
  PAST_BATCHES,
  PERSON,
  QUEENS_WENT,
  RUNNING_BATCHES,
  SEED,
  WEATHER,
  WISHES,
  YARDS,
} from './story.ts';
import { hiveId, need } from './story-needs.ts';
import { tellBatch } from './tell-batch.ts';
import { tellEarlyBoxes } from './tell-early-boxes.ts';
import { tellFeeding } from './tell-feeding.ts';
import { tellQueens } from './tell-queens.ts';
import { tellStock } from './tell-stock.ts';

/** The day the demo is held at: a Thursday in May with jobs of every kind. */
export const DEMO_DAY = dayOfIso(HELD_DAY);

/** Builds the made-up yard through the same operations a person uses, with the same rules, warnings and tallies. */
export function buildDemo(desk: Desk): void {
  const chance = new Chance(SEED);
  for (const yard of YARDS) need(saveYard(desk, yard));
  for (const hive of HIVES) addHive(desk, hive);
  for (const boxes of BOXES) {
    const count = readBoxCodes(boxes.codes)?.length ?? 0;
    const ids = Array.from({ length: count }, () => desk.ids.next());
    const { codes, row, type: boxType } = boxes;
    need(addBoxes(desk, { ids, codes, row, boxType, yardId: yardId(boxes.yard) }));
  }
  for (const story of PAST_BATCHES) tellBatch(onDay(desk, lastDayOf(story.larvaeOn)), chance, story, 'to-the-end');
  settleQueens(desk);
  tellQueens(desk);
  for (const story of RUNNING_BATCHES) tellBatch(onDay(desk, HELD_DAY), chance, story, HELD_DAY);
  tellEarlyBoxes(onDay(desk, HELD_DAY), chance);
  addLooks(desk);
  tellStock(desk);
  tellFeeding(desk);
  need(saveSettings(desk, PERSON));
  for (const day of WEATHER) need(saveWeather(desk, day));
  for (const wish of WISHES) need(saveWish(desk, { ...wish, settledOn: null }));
}

/** The desk as it was on another day; the story is told in order. */
const onDay = (desk: Desk, today: string): Desk => ({ ...desk, today: dayOfIso(today) });

const DAYS_OF_A_BATCH = 60;
const lastDayOf = (larvaeOn: string) => isoOfDay(addDays(dayOfIso(larvaeOn), DAYS_OF_A_BATCH));

const yardId = (name: string): string | null => YARDS.find((yard) => yard.name === name)?.id ?? null;

function addHive(desk: Desk, { code, name, line, yard, place, roles }: (typeof HIVES)[number]): void {
  const colonyId = hiveId(code);
  const hive = { id: colonyId, code, name, yardId: yardId(yard), place, motherLine: line, note: null, endedOn: null };
  need(saveHive(desk, hive));
  const held = yearOfDay(DEMO_DAY);
  for (const season of [held - 2, held - 1, held])
    need(setRoles(desk, { colonyId, season, roles: [...roles], ids: roles.map(() => desk.ids.next()) }));
}

const LOOKS = [
  { hive: 'H02', on: '2026-04-25', strength: 4, food: 4, note: 'Eight combs of brood, made queenless tomorrow.' },
  { hive: 'H04', on: '2026-05-18', strength: 5, food: 3, note: 'Very strong. Fed two litres.' },
  { hive: 'H09', on: '2026-05-10', strength: 4, food: 4, note: 'Good pollen. Ready for larvae tomorrow.' },
  { hive: 'H12', on: '2026-05-12', strength: 2, food: 3, note: 'Slow again; not a builder before June.' },
  { hive: 'H03', on: '2026-04-24', strength: 4, food: 4, note: 'Calm as ever. Comb for the edge put in.' },
  { hive: 'H18', on: '2026-04-20', strength: 4, food: 4, note: 'Two drone combs sealed.' },
] as const;

function addLooks(desk: Desk): void {
  for (const { hive, on, ...look } of LOOKS)
    need(recordHiveLook(desk, { id: desk.ids.next(), colonyId: hiveId(hive), lookedOn: on, ...look }));
}

const DAYS_TO_LEAVE = 10;

/** The queens of past seasons have all left their boxes. */
function settleQueens(desk: Desk): void {
  desk.workbook.tables.queens.all().forEach((queen, index) => {
    const went = QUEENS_WENT[index % QUEENS_WENT.length];
    if (!went) return;
    const left = addDays(dayOfIso(queen.provedOn ?? HELD_DAY), DAYS_TO_LEAVE);
    need(saveQueen({ ...desk, today: left }, { ...queen, ...went, boxId: null }));
  });
}
