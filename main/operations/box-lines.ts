import type { BoxLine, BoxStateKind } from '../../shared/contract/boxes.ts';
import { type Day, dayOfIso, isoOfDay } from '../../shared/kernel/day.ts';
import type { CellsComing } from '../../shared/model/box-proposal.ts';
import type { LookResult } from '../../shared/model/look.ts';
import type { MatingBox, Placement } from '../../shared/model/mating-box.ts';
import type { Step } from '../../shared/model/step.ts';
import type { Timetable } from '../../shared/model/timetable.ts';
import type { Tables } from '../workbook/workbook.ts';
import { timetableOf } from './batch-calendar.ts';
import { lastLook } from './batch-lines.ts';
import { cellsComingSoon, freeOutlook, heldOutlook, NO_OUTLOOK } from './box-outlook.ts';

const STATE_BY_RESULT: Readonly<Record<LookResult, BoxStateKind | null>> = {
  laying: 'laying',
  proved: 'proved',
  virgin: 'virgin',
  queen: 'virgin',
  out: 'virgin',
  cell: 'cell',
  none: 'failed',
  gone: 'failed',
  'drone-layer': 'failed',
  'cell-failed': 'failed',
  'not-looked': null,
};

/** Reads box lines while keeping each batch's timetable, since many boxes share one. */
export class BoxReader {
  readonly #tables: Tables;
  readonly #today: Day;
  readonly #timetables = new Map<string, Timetable>();
  #cellsComing: CellsComing | null | undefined;

  constructor(tables: Tables, today: Day) {
    this.#tables = tables;
    this.#today = today;
  }

  line(box: MatingBox): BoxLine {
    const tables = this.#tables;
    const placement = tables.placements.where({ boxId: box.id, endedOn: null })[0] ?? null;
    return {
      id: box.id,
      code: box.code,
      yardId: box.yardId,
      yard: box.yardId === null ? null : (tables.yards.get(box.yardId)?.name ?? null),
      row: box.row,
      walkOrder: box.walkOrder,
      boxType: box.boxType,
      note: box.note,
      retiredOn: box.retiredOn,
      ...(placement ? this.#held(placement, box) : this.#withoutCell(box)),
      ...(box.retiredOn === null ? {} : { state: 'retired', ...NO_OUTLOOK }),
    };
  }

  timetable(batchId: string): Timetable | null {
    const known = this.#timetables.get(batchId);
    if (known) return known;
    const batch = this.#tables.batches.get(batchId);
    if (!batch) return null;
    const timetable = timetableOf(this.#tables, batch);
    this.#timetables.set(batchId, timetable);
    return timetable;
  }

  /** Read once for all boxes, and only if one asks. */
  #cells(): CellsComing | null {
    this.#cellsComing =
      this.#cellsComing === undefined ? cellsComingSoon(this.#tables, this.#today) : this.#cellsComing;
    return this.#cellsComing;
  }

  /** Free, unless a queen with a number sits in it whose cell is of no batch of the workbook. */
  #withoutCell(box: MatingBox): HeldBox {
    const queen = this.#tables.queens.where({ boxId: box.id, place: 'in-box' })[0];
    if (!queen) return { ...EMPTY, ...freeOutlook(this.#tables, box, this.#today) };
    const look = this.#tables.boxLooks
      .where({ boxId: box.id, placementId: null })
      .toSorted((a, b) => (a.lookedOn < b.lookedOn ? -1 : 1))
      .findLast(({ result }) => STATE_BY_RESULT[result] !== null);
    const known = queen.provedOn !== null ? 'proved' : queen.firstEggsOn !== null ? 'laying' : 'virgin';
    const seen = look ? { lastResult: look.result, lastLookOn: look.lookedOn } : {};
    const state = (look && STATE_BY_RESULT[look.result]) ?? known;
    return { ...EMPTY, state, queenId: queen.id, queenNumber: queen.number, ...seen };
  }

  #held(placement: Placement, box: MatingBox): HeldBox {
    const tables = this.#tables;
    const batch = tables.batches.get(placement.batchId);
    const timetable = this.timetable(placement.batchId);
    const look = lastLook(tables, placement.id);
    const queen = tables.queens.where({ boxId: box.id, place: 'in-box' })[0] ?? null;
    const since = timetable ? this.#today - timetable.emergence.expected : null;
    const state = (look && STATE_BY_RESULT[look.result]) ?? (since !== null && since >= 0 ? 'virgin' : 'cell');
    return {
      state,
      placementId: placement.id,
      batchId: placement.batchId,
      batch: batch?.code ?? null,
      breederId: batch?.breederId ?? null,
      breeder: batch?.breederId ? (tables.colonies.get(batch.breederId)?.code ?? null) : null,
      placedOn: placement.placedOn,
      emergenceExpected: timetable ? isoOfDay(timetable.emergence.expected) : null,
      daysSinceEmergence: since,
      handsOffUntil: timetable ? this.#handsOffUntil(timetable) : null,
      firstLookOn: dayText(timetable, 'first-look'),
      sealedBroodLookOn: dayText(timetable, 'sealed-brood-look'),
      lastResult: look?.result ?? null,
      lastLookOn: look?.lookedOn ?? null,
      ...(timetable ? heldOutlook(tables, placement, timetable, this.#cells(), this.#today) : NO_OUTLOOK),
      queenId: queen?.id ?? null,
      queenNumber: queen?.number ?? null,
    };
  }

  #handsOffUntil(timetable: Timetable): string | null {
    const span = timetable.handsOff.find(
      ({ place, from, to }) => place === 'boxes' && from <= this.#today && this.#today <= to,
    );
    return span ? isoOfDay(span.to) : null;
  }
}

type HeldBox = Omit<
  BoxLine,
  'id' | 'code' | 'yardId' | 'yard' | 'row' | 'walkOrder' | 'boxType' | 'note' | 'retiredOn'
>;

const EMPTY: HeldBox = {
  state: 'free',
  placementId: null,
  batchId: null,
  batch: null,
  breederId: null,
  breeder: null,
  placedOn: null,
  emergenceExpected: null,
  daysSinceEmergence: null,
  handsOffUntil: null,
  firstLookOn: null,
  sealedBroodLookOn: null,
  lastResult: null,
  lastLookOn: null,
  queenId: null,
  queenNumber: null,
  ...NO_OUTLOOK,
};

function dayText(timetable: Timetable | null, step: Step): string | null {
  const dated = timetable?.steps.find((one) => one.step === step);
  return dated ? isoOfDay(dated.doneOn ?? dated.expected) : null;
}

/** Days since the expected emergence on a given day; negative before it. */
export const daysSince = (timetable: Timetable, on: string): number => dayOfIso(on) - timetable.emergence.expected;
