import type { NoteKind, NoteLine } from '../../../shared/contract/notes.ts';
import type { IsoDay } from '../../../shared/kernel/day.ts';
import type { Tables } from '../../workbook/workbook.ts';

/** Every note of the workbook, with what it is about. Empty notes are none. */
export function allNotes(tables: Tables): readonly NoteLine[] {
  return [...batchNotes(tables), ...boxNotes(tables), ...hiveNotes(tables), ...queenNotes(tables)].filter(
    (note) => note.text.trim() !== '',
  );
}

type Named = Pick<NoteLine, 'about' | 'name'>;

const note = (kind: NoteKind, named: Named, on: IsoDay | null, text: string | null): NoteLine => ({
  kind,
  ...named,
  on,
  text: text ?? '',
});

const batchNamed = (tables: Tables, id: string): Named => ({
  about: { kind: 'batch', id },
  name: tables.batches.get(id)?.code ?? '',
});
const boxNamed = (tables: Tables, id: string): Named => ({
  about: { kind: 'box', id },
  name: tables.boxes.get(id)?.code ?? '',
});
const hiveNamed = (tables: Tables, id: string): Named => ({
  about: { kind: 'hive', id },
  name: tables.colonies.get(id)?.code ?? '',
});
const queenNamed = (tables: Tables, id: string): Named => ({
  about: { kind: 'queen', id },
  name: tables.queens.get(id)?.number ?? '',
});

function batchNotes(tables: Tables): readonly NoteLine[] {
  return [
    ...tables.batches.all().flatMap((one) => {
      const named = batchNamed(tables, one.id);
      return [note('batch', named, one.anchorOn, one.note), note('lesson', named, one.closedOn, one.lesson)];
    }),
    ...tables.stepsDone.all().map((one) => note('step', batchNamed(tables, one.batchId), one.doneOn, one.note)),
    ...tables.stepMoves
      .all()
      .map((one) => note('moved-step', batchNamed(tables, one.batchId), one.movedTo, one.reason)),
    ...tables.stepDrops
      .all()
      .map((one) => note('dropped-step', batchNamed(tables, one.batchId), one.droppedOn, one.reason)),
    ...tables.observations.all().map((one) => note('sighting', batchNamed(tables, one.batchId), one.seenOn, one.note)),
  ];
}

function boxNotes(tables: Tables): readonly NoteLine[] {
  return [
    ...tables.boxes.all().map((one) => note('box', boxNamed(tables, one.id), null, one.note)),
    ...tables.feedings
      .all()
      .flatMap((one) =>
        one.boxId === null
          ? []
          : [note('feeding', boxNamed(tables, one.boxId), one.fedOn, joined(one.ownFeed, one.note))],
      ),
    ...tables.boxLooks.all().map((one) => note('box-look', boxNamed(tables, one.boxId), one.lookedOn, one.note)),
  ];
}

function hiveNotes(tables: Tables): readonly NoteLine[] {
  const of = (colonyId: string) => hiveNamed(tables, colonyId);
  return [
    ...tables.yards.all().map((one) => note('yard', { about: null, name: one.name }, null, one.note)),
    ...tables.colonies.all().map((one) => note('hive', of(one.id), null, one.note)),
    ...tables.hiveLooks.all().map((one) => note('hive-look', of(one.colonyId), one.lookedOn, one.note)),
    ...tables.stockScores.all().map((one) => note('score', of(one.colonyId), one.scoredOn, one.note)),
    ...tables.stockTests.all().map((one) => note('test', of(one.colonyId), one.testedOn, one.note)),
    ...tables.feedings
      .all()
      .flatMap((one) =>
        one.colonyId === null ? [] : [note('feeding', of(one.colonyId), one.fedOn, joined(one.ownFeed, one.note))],
      ),
    ...tables.treatments
      .all()
      .map((one) =>
        note('treatment', of(one.colonyId), one.fromOn, joined(one.product, one.reason, one.paper, one.note)),
      ),
    ...tables.colonyMoves
      .all()
      .map((one) => note('hive-move', of(one.colonyId), one.movedOn, joined(one.place, one.paper, one.note))),
  ];
}

function queenNotes(tables: Tables): readonly NoteLine[] {
  const of = (queenId: string) => queenNamed(tables, queenId);
  return [
    ...tables.queens.all().map((one) => note('queen', of(one.id), one.markedOn, one.note)),
    ...tables.queenMoves
      .all()
      .map((one) => note('queen-move', of(one.queenId), one.movedOn, joined(one.goneTo, one.price, one.note))),
    ...tables.queenPromises
      .all()
      .map((one) => note('promise', of(one.queenId), one.promisedOn, joined(one.promisedTo, one.note))),
    ...tables.queenFeedback
      .all()
      .map((one) => note('feedback', of(one.queenId), one.toldOn, joined(one.toldBy, one.note))),
    ...tables.followUps.all().flatMap((one) => {
      const named = one.queenId !== null ? of(one.queenId) : one.boxId !== null ? boxNamed(tables, one.boxId) : null;
      return named ? [note('check', named, one.doneOn ?? one.dueOn, one.note)] : [];
    }),
  ];
}

const joined = (...texts: readonly (string | null)[]): string => texts.filter(Boolean).join(' · ');
