import { expect, test } from 'vitest';
import { endPlacement } from '../../../../main/operations/boxes/end-placement.ts';
import { redo } from '../../../../main/operations/history/redo.ts';
import { undo } from '../../../../main/operations/history/undo.ts';
import { refuse } from '../../../../shared/kernel/result.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBoxes } from '../../../builders/running-batch.ts';

const freed = { placementId: 'placement-1', endedOn: '2026-06-02', reason: 'caught' } as const;

test('does again what was taken back, in the order it was done', () => {
  const desk = aDeskWithBoxes('2026-06-02');
  const { placements } = desk.workbook.tables;
  mustOk(endPlacement(desk, freed));
  mustOk(endPlacement(desk, { ...freed, placementId: 'placement-2', reason: 'failed' }));
  mustOk(undo(desk));
  mustOk(undo(desk));
  expect(mustOk(redo(desk)).words).toEqual({ did: 'end-placement', box: 'K01', reason: 'caught' });
  expect(placements.get('placement-1')).toMatchObject({ endedOn: '2026-06-02', endReason: 'caught' });
  expect(placements.get('placement-2')).toMatchObject({ endedOn: null });
  expect(mustOk(redo(desk)).words).toMatchObject({ box: 'K02' });
  expect(redo(desk)).toEqual(refuse({ kind: 'nothing-to-redo' }));
});

test('a new change ends what could be done again', () => {
  const desk = aDeskWithBoxes('2026-06-02');
  mustOk(endPlacement(desk, freed));
  mustOk(undo(desk));
  mustOk(endPlacement(desk, { ...freed, reason: 'united' }));
  expect(redo(desk)).toEqual(refuse({ kind: 'nothing-to-redo' }));
  expect(desk.workbook.tables.placements.get('placement-1')).toMatchObject({ endReason: 'united' });
});
