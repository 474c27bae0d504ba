import { expect, test } from 'vitest';
import { Chance } from '../../../main/demo/chance.ts';
import { addBar } from '../../../main/operations/batches/add-bar.ts';
import { recordBarCounts } from '../../../main/operations/batches/record-bar-counts.ts';
import { endPlacement } from '../../../main/operations/boxes/end-placement.ts';
import { placeCells } from '../../../main/operations/boxes/place-cells.ts';
import { recordLook } from '../../../main/operations/boxes/record-look.ts';
import { countTally } from '../../../main/operations/tally-keeping.ts';
import { LOOK_RESULTS } from '../../../shared/model/look.ts';
import { PLACEMENT_ENDS } from '../../../shared/model/mating-box.ts';
import { aDeskWithBoxes, PLACED_ON } from '../../builders/running-batch.ts';

test('kept tallies equal a full recount after a long walk of edits, refused ones among them', () => {
  const desk = aDeskWithBoxes('2026-06-20');
  const { tables } = desk.workbook;
  const chance = new Chance(7);
  const number = (most: number) => (chance.happens(0.2) ? null : Math.floor(chance.next() * most));
  let accepted = 0;
  for (let step = 0; step < 600; step += 1) {
    const bars = tables.bars.where({ batchId: 'batch-1' });
    const box = `box-${1 + Math.floor(chance.next() * 10)}`;
    const edits = [
      () =>
        recordBarCounts(desk, {
          batchId: 'batch-1',
          barId: chance.pick(bars).id,
          countedOn: '2026-05-09',
          given: number(20),
          taken: number(16),
          removed: number(3),
          sealed: number(14),
        }),
      () =>
        recordLook(desk, {
          id: `look-${step}`,
          boxId: box,
          lookedOn: `2026-06-${String(1 + (step % 28)).padStart(2, '0')}`,
          result: chance.pick(LOOK_RESULTS),
          strength: null,
          food: null,
          note: null,
          queen: null,
        }),
      () =>
        placeCells(desk, {
          batchId: 'batch-1',
          boxes: tables.boxes.get(box)?.code ?? '',
          ids: [`p-${step}`],
          placedOn: PLACED_ON,
          barId: null,
        }),
      () =>
        endPlacement(desk, {
          placementId: tables.placements.where({ boxId: box })[0]?.id ?? 'none',
          endedOn: '2026-06-28',
          reason: chance.pick(PLACEMENT_ENDS),
        }),
      ...(bars.length < 3 ? [() => addBar(desk, { batchId: 'batch-1', barId: `bar-${step}` })] : []),
    ];
    if (chance.pick(edits)().ok) accepted += 1;
    expect(tables.tallies.get('batch-1')).toEqual(countTally(tables, 'batch-1'));
  }
  expect(accepted).toBeGreaterThan(150);
});
