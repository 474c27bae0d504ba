import type { BatchChanged, BatchStart } from '../../../shared/contract/batches.ts';
import type { Notice, Refusal } from '../../../shared/contract/refusal.ts';
import { dayOfIso, yearOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Batch } from '../../../shared/model/batch.ts';
import type { Role } from '../../../shared/model/colony.ts';
import type { Timetable } from '../../../shared/model/timetable.ts';
import { usualMostCells } from '../../engine/calendar/find-clashes.ts';
import { planTimetable } from '../../engine/calendar/plan-timetable.ts';
import type { Ids } from '../../ports/ports.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { plainInput } from '../batch-calendar.ts';
import type { Desk } from '../operation.ts';
import { planningRules } from '../planning-rules.ts';
import { keepTally } from '../tally-keeping.ts';
import { builderRefusal, codeRefusal, combRefusal, hiveRefusal, restNotice } from './check-start.ts';
import { nextBatchCode } from './next-code.ts';
import { readBatch } from './read-batch.ts';

/** Starts a batch from one form, with hives that are not in the workbook yet and its bars, in one change. */
export function startBatch(desk: Desk, input: BatchStart): Result<BatchChanged, Refusal> {
  const step = (_: Tables, { batch }: BatchChanged) => ({ did: 'start-batch', batch: batch.code }) as const;
  return desk.workbook.change(step, (tables) => {
    const early = combRefusal(input) ?? codeRefusal(tables, input) ?? hiveRefusal(tables, input);
    if (early) return refuse(early);
    const planned = planTimetable(plainInput(tables, input, null));
    if (!planned.ok) return planned;
    if (input.builderId !== null) {
      const inUse = builderRefusal(tables, input.builderId, planned.value);
      if (inUse) return refuse(inUse);
    }
    const notices = startNotices(tables, input, planned.value);
    const batch = writeBatch(tables, desk.ids, input);
    keepTally(tables, batch.id);
    return ok({ batch: readBatch(desk, tables, batch), notices });
  });
}

function startNotices(tables: Tables, input: BatchStart, timetable: Timetable): readonly Notice[] {
  const rules = planningRules(tables);
  const { builderRestDays } = rules;
  const usualMost = usualMostCells(rules);
  const cells = input.cellsPlanned;
  return [
    ...(cells !== null && cells > usualMost ? [{ kind: 'many-cells-for-builder', cells, usualMost } as const] : []),
    ...(input.builderId === null ? [] : restNotice(tables, input.builderId, timetable, builderRestDays)),
  ];
}

function writeBatch(tables: Tables, ids: Ids, { newBreeder, newBuilder, bars, ...input }: BatchStart): Batch {
  const season = yearOfDay(dayOfIso(input.anchorOn));
  const breederId = newBreeder ? addHive(tables, ids, newBreeder, 'breeder', season) : input.breederId;
  const sameNew = newBuilder && newBreeder && newBuilder.code === newBreeder.code;
  const builderId = sameNew
    ? addRole(tables, ids, newBreeder.id, 'builder', season)
    : newBuilder
      ? addHive(tables, ids, newBuilder, 'builder', season)
      : input.builderId;
  const batch: Batch = {
    ...input,
    code: input.code ?? nextBatchCode(tables, season),
    season,
    breederId,
    builderId,
    lesson: null,
    closedOn: null,
  };
  tables.batches.insert(batch);
  addBars(tables, ids, batch, bars);
  return batch;
}

interface NewHive {
  readonly id: string;
  readonly code: string;
}

function addHive(tables: Tables, ids: Ids, { id, code }: NewHive, role: Role, season: number): string {
  const empty = { name: null, yardId: null, place: null, motherLine: null, note: null, endedOn: null };
  tables.colonies.insert({ id, code, ...empty });
  return addRole(tables, ids, id, role, season);
}

function addRole(tables: Tables, ids: Ids, colonyId: string, role: Role, season: number): string {
  tables.colonyRoles.insert({ id: ids.next(), colonyId, season, role });
  return colonyId;
}

/** Lays out the bars; nothing is counted as given until the person says so. */
function addBars(tables: Tables, ids: Ids, batch: Batch, bars: number): void {
  for (let number = 1; number <= bars; number += 1) tables.bars.insert({ id: ids.next(), batchId: batch.id, number });
}
