import { addBar } from '../../main/operations/batches/add-bar.ts';
import { closeBatch } from '../../main/operations/batches/close-batch.ts';
import { editBatch } from '../../main/operations/batches/edit-batch.ts';
import { giveAsPlanned } from '../../main/operations/batches/give-as-planned.ts';
import { markStep } from '../../main/operations/batches/mark-step.ts';
import { moveStep } from '../../main/operations/batches/move-step.ts';
import { recordBarCounts } from '../../main/operations/batches/record-bar-counts.ts';
import { recordObservation } from '../../main/operations/batches/record-observation.ts';
import { removeBatch } from '../../main/operations/batches/remove-batch.ts';
import { removeObservation } from '../../main/operations/batches/remove-observation.ts';
import { reopenBatch } from '../../main/operations/batches/reopen-batch.ts';
import { setWarmth } from '../../main/operations/batches/set-warmth.ts';
import { startBatch } from '../../main/operations/batches/start-batch.ts';
import { unmarkStep } from '../../main/operations/batches/unmark-step.ts';
import { addBoxes } from '../../main/operations/boxes/add-boxes.ts';
import { endPlacement } from '../../main/operations/boxes/end-placement.ts';
import { placeCells } from '../../main/operations/boxes/place-cells.ts';
import { recordLook } from '../../main/operations/boxes/record-look.ts';
import { removeLook } from '../../main/operations/boxes/remove-look.ts';
import { retireBox } from '../../main/operations/boxes/retire-box.ts';
import { feedSeveral } from '../../main/operations/feeding/feed-several.ts';
import { recordFeeding } from '../../main/operations/feeding/record-feeding.ts';
import { removeFeeding } from '../../main/operations/feeding/remove-feeding.ts';
import { recordHiveLook } from '../../main/operations/hives/record-hive-look.ts';
import { removeHiveLook } from '../../main/operations/hives/remove-hive-look.ts';
import { saveHive } from '../../main/operations/hives/save-hive.ts';
import { saveYard } from '../../main/operations/hives/save-yard.ts';
import { setRoles } from '../../main/operations/hives/set-roles.ts';
import { saveMethodCopy } from '../../main/operations/methods/save-method-copy.ts';
import type { Desk } from '../../main/operations/operation.ts';
import { moveQueen } from '../../main/operations/queens/move-queen.ts';
import { promiseQueen } from '../../main/operations/queens/promise-queen.ts';
import { recordFeedback } from '../../main/operations/queens/record-feedback.ts';
import { saveQueen } from '../../main/operations/queens/save-queen.ts';
import { takeBackPromise } from '../../main/operations/queens/take-back-promise.ts';
import { removeWish } from '../../main/operations/season/remove-wish.ts';
import { saveWish } from '../../main/operations/season/save-wish.ts';
import { saveSettings } from '../../main/operations/settings/save-settings.ts';
import { answerFollowUp } from '../../main/operations/today/answer-follow-up.ts';
import { saveWeather } from '../../main/operations/weather/save-weather.ts';
import { isoOfDay } from '../../shared/kernel/day.ts';
import { ok } from '../../shared/kernel/result.ts';
import { ROLES } from '../../shared/model/colony.ts';
import { FEEDS } from '../../shared/model/feeding.ts';
import { FOLLOW_UP_ANSWERS } from '../../shared/model/follow-up-answer.ts';
import { LOOK_RESULTS } from '../../shared/model/look.ts';
import { PLACEMENT_ENDS } from '../../shared/model/mating-box.ts';
import { QUEEN_PLACES } from '../../shared/model/queen.ts';
import { FEEDBACK_OUTCOMES, INTRODUCTION_WAYS } from '../../shared/model/queen-story.ts';
import { aColony } from './colony.ts';
import { mustOk } from './desk.ts';
import type { Draw } from './draw.ts';
import { aQueen } from './queen.ts';
import { BATCH_ACTS } from './random-batch-act.ts';
import { aStart } from './running-batch.ts';

type Act = (desk: Desk, draw: Draw) => { readonly ok: boolean };

const batchId = ({ workbook }: Desk, draw: Draw) => draw.from(workbook.tables.batches.all())?.id ?? 'none';
const boxId = ({ workbook }: Desk, draw: Draw) => draw.from(workbook.tables.boxes.all())?.id ?? 'none';
const hiveId = ({ workbook }: Desk, draw: Draw) => draw.from(workbook.tables.colonies.all())?.id ?? 'none';

const start: Act = (desk, draw) => {
  const known = desk.workbook.tables.colonies.all();
  return startBatch(
    desk,
    aStart({
      id: desk.ids.next(),
      anchorOn: draw.day('2026-05-04', 3),
      cellsPlanned: draw.count(30),
      bars: 1 + draw.below(3),
      breederId: draw.happens(0.5) ? (draw.from(known)?.id ?? null) : null,
      newBreeder: draw.happens(0.4) ? { id: desk.ids.next(), code: `H${draw.below(90)}` } : null,
      newBuilder: draw.happens(0.6) ? { id: desk.ids.next(), code: `B${draw.below(90)}` } : null,
      note: draw.note(),
    }),
  );
};

/** A batch whose counts and cells are likely to go through. */
const count: Act = (desk, draw) => {
  const bar = draw.from(desk.workbook.tables.bars.all());
  return recordBarCounts(desk, {
    batchId: bar?.batchId ?? 'none',
    barId: bar?.id ?? 'none',
    countedOn: '2026-05-12',
    given: draw.happens(0.8) ? 12 : draw.count(20),
    taken: draw.count(12),
    removed: draw.count(2),
    sealed: draw.count(9),
  });
};

const place: Act = (desk, draw) =>
  placeCells(desk, {
    batchId: batchId(desk, draw),
    boxes: desk.workbook.tables.boxes.get(boxId(desk, draw))?.code ?? 'K01',
    ids: [desk.ids.next()],
    placedOn: draw.day('2026-05-14', 3),
    barId: null,
  });

const look: Act = (desk, draw) =>
  recordLook(desk, {
    id: desk.ids.next(),
    boxId: boxId(desk, draw),
    lookedOn: draw.day('2026-05-26', 8),
    result: draw.pick(LOOK_RESULTS),
    strength: draw.happens(0.5) ? null : 1 + draw.below(5),
    food: null,
    note: draw.note(),
    queen: draw.happens(0.3) ? { id: desk.ids.next(), number: `26-${draw.below(40)}` } : null,
  });

const stepOf = (desk: Desk, draw: Draw) => ({
  id: desk.ids.next(),
  batchId: batchId(desk, draw),
  step: draw.pick(['count-taken', 'count-sealed', 'place-cells', 'first-look'] as const),
});

const observe: Act = (desk, draw) =>
  recordObservation(desk, {
    id: draw.from(desk.workbook.tables.observations.all())?.id ?? desk.ids.next(),
    batchId: batchId(desk, draw),
    what: draw.pick(['cells-sealed', 'cells-open', 'first-eggs', 'cells-torn-down'] as const),
    seenOn: draw.day('2026-05-08', 6),
    fromHours: draw.happens(0.5) ? null : draw.below(40) / 2,
    toHours: null,
    note: draw.note(),
  });

const queen: Act = (desk, draw) => {
  const known = draw.happens(0.5) ? draw.from(desk.workbook.tables.queens.all()) : null;
  const fresh = aQueen({ id: desk.ids.next(), number: `26-${draw.below(40)}` });
  return saveQueen(desk, { ...(known ?? fresh), place: draw.pick(QUEEN_PLACES), note: draw.note() });
};

const moveHer: Act = (desk, draw) => {
  const place = draw.happens(0.8) ? 'in-hive' : draw.pick(QUEEN_PLACES);
  return moveQueen(desk, {
    id: desk.ids.next(),
    queenId: draw.from(desk.workbook.tables.queens.all())?.id ?? 'none',
    movedOn: draw.day('2026-06-10', 9),
    place,
    colonyId: place === 'in-hive' ? hiveId(desk, draw) : null,
    goneTo: null,
    way: draw.from([null, ...INTRODUCTION_WAYS]),
    price: null,
    note: draw.note(),
  });
};

/** Every operation that writes, but printing and taking in of files; each with what a person might type, right and wrong. */
export const ACTS: Readonly<Record<string, Act>> = {
  start,
  count,
  place,
  look,
  observe,
  queen,
  'move a queen': moveHer,
  'promise a queen': (desk, draw) =>
    promiseQueen(desk, {
      id: desk.ids.next(),
      queenId: draw.from(desk.workbook.tables.queens.all())?.id ?? 'none',
      promisedOn: draw.day('2026-06-10', 9),
      promisedTo: draw.note() ?? 'the club',
      wantedOn: draw.happens(0.5) ? draw.day('2026-06-15', 20) : null,
      note: null,
    }),
  'take a promise back': (desk, draw) =>
    takeBackPromise(desk, { promiseId: draw.from(desk.workbook.tables.queenPromises.all())?.id ?? 'none' }),
  'hear of a queen': (desk, draw) =>
    recordFeedback(desk, {
      id: draw.from(desk.workbook.tables.queenFeedback.all())?.id ?? desk.ids.next(),
      queenId: draw.from(desk.workbook.tables.queens.all())?.id ?? 'none',
      toldOn: draw.day('2026-06-15', 9),
      toldBy: null,
      outcome: draw.pick(FEEDBACK_OUTCOMES),
      note: draw.note(),
    }),
  'answer a check': (desk, draw) =>
    answerFollowUp(desk, {
      followUpId: draw.from(desk.workbook.tables.followUps.where({ doneOn: null }))?.id ?? 'none',
      doneOn: draw.day('2026-06-24', 9),
      answer: draw.pick(FOLLOW_UP_ANSWERS),
      note: draw.note(),
    }),
  'note the weather': (desk, draw) =>
    saveWeather(desk, {
      day: draw.day('2026-05-20', 5),
      maxCelsius: draw.count(30),
      windKmh: draw.count(3),
      rain: null,
      flyingHours: draw.happens(0.5) ? null : draw.below(10) / 2,
    }),
  'give as planned': (desk, draw) => giveAsPlanned(desk, { batchId: batchId(desk, draw) }),
  'write a wish down': (desk, draw) =>
    saveWish(desk, {
      id: draw.from(desk.workbook.tables.wishes.all())?.id ?? desk.ids.next(),
      forWhom: draw.note(),
      queens: 1 + draw.below(20),
      wantedOn: draw.day('2026-06-20', 30),
      settledOn: draw.happens(0.3) ? draw.day('2026-06-20', 9) : null,
      note: null,
    }),
  'take a wish out': (desk, draw) =>
    removeWish(desk, { wishId: draw.from(desk.workbook.tables.wishes.all())?.id ?? 'none' }),
  'say how warm': (desk, draw) =>
    setWarmth(desk, { batchId: batchId(desk, draw), sealedCelsius: draw.happens(0.4) ? null : 30 + draw.below(5) }),
  'add a bar': (desk, draw) => addBar(desk, { batchId: batchId(desk, draw), barId: desk.ids.next() }),
  'close a batch': (desk, draw) =>
    closeBatch(desk, { batchId: batchId(desk, draw), closedOn: draw.day('2026-07-01', 5), lesson: draw.note() }),
  'open a batch again': (desk, draw) => {
    const closed = desk.workbook.tables.batches.all().filter(({ closedOn }) => closedOn !== null);
    return reopenBatch(desk, { batchId: draw.from(closed)?.id ?? batchId(desk, draw) });
  },
  'edit a batch': (desk, draw) =>
    editBatch(desk, { batchId: batchId(desk, draw), note: draw.note(), lesson: null, practice: draw.happens(0.5) }),
  'mark a step': (desk, draw) =>
    markStep(desk, { ...stepOf(desk, draw), doneOn: draw.day('2026-05-06', 9), note: null }),
  'take a mark back': (desk, draw) => {
    const done = draw.from(desk.workbook.tables.stepsDone.all());
    return unmarkStep(desk, { batchId: done?.batchId ?? 'none', step: done?.step ?? 'count-taken' });
  },
  'move a step': (desk, draw) => {
    const { id, batchId: batch } = stepOf(desk, draw);
    const [step, first] = draw.pick([
      ['place-cells', '2026-05-12'],
      ['first-look', '2026-05-26'],
    ] as const);
    return moveStep(desk, { id, batchId: batch, step, movedTo: draw.day(first, 6), reason: 'rain' });
  },
  ...BATCH_ACTS,
  'take a sighting back': (desk, draw) => {
    const seen = draw.from(desk.workbook.tables.observations.all());
    return removeObservation(desk, { batchId: seen?.batchId ?? 'none', observationId: seen?.id ?? 'none' });
  },
  'add boxes': (desk, draw) => {
    const first = draw.below(60);
    const codes = `K${first}-K${first + 3}`;
    const ids = Array.from({ length: 4 }, () => desk.ids.next());
    return addBoxes(desk, { ids, codes, yardId: null, row: null, boxType: 'mini' });
  },
  'free a box': (desk, draw) =>
    endPlacement(desk, {
      placementId: draw.from(desk.workbook.tables.placements.where({ endedOn: null }))?.id ?? 'none',
      endedOn: draw.day('2026-06-20', 5),
      reason: draw.pick(PLACEMENT_ENDS),
    }),
  'retire a box': (desk, draw) => retireBox(desk, { boxId: boxId(desk, draw), retiredOn: '2026-07-01' }),
  'save a yard': (desk, draw) =>
    saveYard(desk, { id: `yard-${draw.below(3)}`, name: `Yard ${draw.below(4)}`, note: draw.note() }),
  'save a hive': (desk, draw) => {
    const known = draw.happens(0.5) ? draw.from(desk.workbook.tables.colonies.all()) : null;
    const fresh = aColony({ id: desk.ids.next(), code: `H${draw.below(90)}` });
    return saveHive(desk, { ...(known ?? fresh), note: draw.note() });
  },
  'set roles': (desk, draw) => {
    const roles = ROLES.filter(() => draw.happens(0.4));
    return setRoles(desk, { colonyId: hiveId(desk, draw), season: 2026, roles, ids: roles.map(() => desk.ids.next()) });
  },
  'look into a hive': (desk, draw) =>
    recordHiveLook(desk, {
      id: draw.from(desk.workbook.tables.hiveLooks.all())?.id ?? desk.ids.next(),
      colonyId: hiveId(desk, draw),
      lookedOn: draw.day('2026-05-01', 30),
      strength: 3,
      food: null,
      note: draw.note() ?? 'calm',
    }),
  'take a look out': (desk, draw) =>
    removeLook(desk, { lookId: draw.from(desk.workbook.tables.boxLooks.all())?.id ?? 'none' }),
  'take a look into a hive out': (desk, draw) =>
    removeHiveLook(desk, { lookId: draw.from(desk.workbook.tables.hiveLooks.all())?.id ?? 'none' }),
  'take a batch out': (desk, draw) => removeBatch(desk, { batchId: batchId(desk, draw) }),
  'feed one': (desk, draw) =>
    recordFeeding(desk, {
      id: draw.from(desk.workbook.tables.feedings.all())?.id ?? desk.ids.next(),
      ...(draw.happens(0.5)
        ? { place: 'hive', placeId: hiveId(desk, draw) }
        : { place: 'box', placeId: boxId(desk, draw) }),
      fedOn: draw.day('2026-05-01', 30),
      feed: draw.pick(FEEDS),
      ownFeed: 'malt',
      amount: draw.pick(['1', '500 g', '?', '', 'plenty']),
      note: draw.note(),
    }),
  'feed several': (desk, draw) =>
    feedSeveral(desk, {
      ids: Array.from({ length: 4 }, () => desk.ids.next()),
      places: draw.pick(['K91-K94', 'H03, K95', 'K01']),
      fedOn: draw.day('2026-05-01', 30),
      feed: 'fondant',
      ownFeed: null,
      amount: '0.3',
      note: null,
    }),
  'take a feeding out': (desk, draw) =>
    removeFeeding(desk, { feedingId: draw.from(desk.workbook.tables.feedings.all())?.id ?? 'none' }),
  'save a method': (desk, draw) =>
    saveMethodCopy(desk, {
      id: `method-${draw.below(2)}`,
      origin: 'larva-grafting',
      name: `Mine ${draw.below(3)}`,
      changes: [],
    }),
  'save settings': (desk, draw) =>
    saveSettings(desk, { cellsPerBuilder: 10 + draw.below(5), awayDays: [draw.day('2026-05-01', 30)] }),
};

/** What an evening is full of comes more often. */
const OFTEN = [
  'start',
  'count',
  'place',
  'look',
  'count',
  'place',
  'look',
  'look',
  'observe',
  'queen',
  'move a queen',
  'answer a check',
];

/** One operation at random, named; `ok` false when it was refused, as a person's typing is now and then. */
export function randomAct(desk: Desk, draw: Draw): { readonly ok: boolean; readonly what: string } {
  const what = draw.pick([...Object.keys(ACTS), ...OFTEN]);
  return { ok: ACTS[what]?.(desk, draw).ok ?? false, what };
}

/** A yard with something in each corner, so that every operation finds what it is about; itself not to be taken back. */
export function layGround(desk: Desk): void {
  const on = { batchId: 'batch-1' };
  mustOk(startBatch(desk, aStart()));
  const bar = desk.workbook.tables.bars.where(on)[0]?.id ?? '';
  mustOk(
    recordBarCounts(desk, {
      ...on,
      barId: bar,
      countedOn: '2026-05-09',
      given: 12,
      taken: 9,
      removed: null,
      sealed: 9,
    }),
  );
  const ids = Array.from({ length: 9 }, () => desk.ids.next());
  mustOk(addBoxes(desk, { ids, codes: 'K91-K99', yardId: null, row: null, boxType: 'mini' }));
  mustOk(placeCells(desk, { ...on, boxes: 'K91-K95', ids, placedOn: '2026-05-14', barId: null }));
  mustOk(
    recordObservation(desk, {
      ...on,
      id: desk.ids.next(),
      what: 'cells-sealed',
      seenOn: '2026-05-09',
      fromHours: null,
      toHours: null,
      note: null,
    }),
  );
  mustOk(saveQueen(desk, aQueen({ number: '26-099' })));
  const nowhere = { goneTo: null, way: null, price: null, note: null };
  const home = { place: 'in-hive', colonyId: 'h12', way: 'candy-cage' } as const;
  mustOk(
    moveQueen(desk, { id: desk.ids.next(), queenId: 'queen-1', movedOn: isoOfDay(desk.today), ...nowhere, ...home }),
  );
  // What the made-up yard was told with cannot be taken back either.
  mustOk(desk.workbook.change({ did: 'build-demo' }, ({ settings }) => ok(settings.put('heldAt', '2026-06-20'))));
}
