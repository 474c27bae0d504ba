import { expect, test } from 'vitest';
import { editBatch } from '../../../../main/operations/batches/edit-batch.ts';
import { listNotes } from '../../../../main/operations/notes/list-notes.ts';
import { NOTE_KINDS } from '../../../../shared/contract/notes.ts';
import { anObservation, aStepDone, aStepDrop, aStepMove } from '../../../builders/batch.ts';
import { aColony } from '../../../builders/colony.ts';
import { fill, mustOk } from '../../../builders/desk.ts';
import { aFeeding } from '../../../builders/feeding.ts';
import { aBox, aHiveLook, aLook } from '../../../builders/mating-box.ts';
import { aQueen } from '../../../builders/queen.ts';
import { aPromise } from '../../../builders/queen-promise.ts';
import { aDeskWithBoxes } from '../../../builders/running-batch.ts';
import { aScore, aTest, aTreatment } from '../../../builders/stock.ts';
import { aYard } from '../../../builders/yard.ts';

const note = 'ants everywhere';

/** The same words noted at every place where something can be noted. */
function aDeskFullOfAnts() {
  const desk = aDeskWithBoxes();
  mustOk(editBatch(desk, { batchId: 'batch-1', note, lesson: note, practice: false }));
  fill(desk, (tables) => {
    tables.stepsDone.insert(aStepDone({ id: 'sd', step: 'stock-boxes', note }));
    tables.stepMoves.insert(aStepMove({ id: 'sm', step: 'set-out', reason: note }));
    tables.stepDrops.insert(aStepDrop({ id: 'sx', step: 'count-sealed', reason: note }));
    tables.observations.insert(anObservation({ note }));
    tables.boxes.insert(aBox({ id: 'noted', code: 'K99', note }));
    tables.boxLooks.insert(aLook({ note }));
    tables.yards.insert(aYard({ note }));
    tables.colonies.insert(aColony({ note }));
    tables.hiveLooks.insert(aHiveLook({ note }));
    tables.queens.insert(aQueen({ note }));
    const moved = { queenId: 'queen-1', movedOn: '2026-06-10', colonyId: null, goneTo: null, way: null, price: null };
    tables.queenMoves.insert({ id: 'qm', place: 'caged', ...moved, note });
    tables.queenFeedback.insert({
      id: 'qf',
      queenId: 'queen-1',
      toldOn: '2026-09-01',
      toldBy: null,
      outcome: 'lost',
      note,
    });
    tables.queenPromises.insert(aPromise({ note }));
    const open = { boxId: null, colonyId: null, doneOn: null, answer: null };
    const due = { what: 'check-eggs', dueOn: '2026-06-17', latestOn: '2026-06-20' } as const;
    tables.followUps.insert({ id: 'fu', ...due, queenId: 'queen-1', ...open, note });
    tables.stockScores.insert(aScore({ note }));
    tables.stockTests.insert(aTest({ note }));
    tables.feedings.insert(aFeeding({ note }));
    tables.feedings.insert(aFeeding({ id: 'fed-box', colonyId: null, boxId: 'noted', feed: 'other', ownFeed: note }));
    tables.treatments.insert(aTreatment({ note }));
    const to = { fromYardId: null, toYardId: null, place: null, paper: null };
    tables.colonyMoves.insert({ id: 'cm', colonyId: 'colony-1', movedOn: '2026-04-01', ...to, note });
  });
  return desk;
}

test('finds a word wherever something can be noted, newest first, and each with what it is about', () => {
  const { notes, total } = listNotes(aDeskFullOfAnts(), { text: 'everywhere ANTS' });
  expect(new Set(notes.map((one) => one.kind))).toEqual(new Set(NOTE_KINDS));
  expect(total).toBe(notes.length);
  expect(notes[0]).toMatchObject({ kind: 'feedback', about: { kind: 'queen', id: 'queen-1' }, name: '26-001' });
  const days = notes.map((one) => one.on ?? '');
  expect(days).toEqual(days.toSorted().toReversed());
  expect(notes.find((one) => one.kind === 'yard')).toMatchObject({ about: null, name: 'Orchard' });
  expect(notes.every((one) => one.name !== '')).toBe(true);
});

test('finds by the name together with a word, and nothing without words', () => {
  const desk = aDeskFullOfAnts();
  expect(listNotes(desk, { text: 'K99 ants' }).notes.map((one) => one.kind)).toEqual(['feeding', 'box']);
  expect(listNotes(desk, { text: '  ' })).toEqual({ notes: [], total: 0 });
  expect(listNotes(desk, { text: 'bear' }).total).toBe(0);
});
