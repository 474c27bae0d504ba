import { describe, expect, test } from 'vitest';
import { recordLook } from '../../../../main/operations/boxes/record-look.ts';
import { removeLook } from '../../../../main/operations/boxes/remove-look.ts';
import type { Desk } from '../../../../main/operations/operation.ts';
import { listStaleSheets } from '../../../../main/operations/print/list-stale-sheets.ts';
import { printYardSheet } from '../../../../main/operations/print/print-yard-sheet.ts';
import type { LookResult } from '../../../../shared/model/look.ts';
import { fill, mustOk } from '../../../builders/desk.ts';
import { aDeskWithBoxes, onDay } from '../../../builders/running-batch.ts';

const wish = { yardId: null, paper: 'a4', large: false } as const;
const print = async (desk: Desk, walkOn: string | null = null) =>
  mustOk(await printYardSheet(desk, { ...wish, walkOn }));

const look = (desk: Desk, box: number, lookedOn: string, result: LookResult = 'laying') =>
  mustOk(
    recordLook(desk, {
      ...{ id: `look-${box}`, boxId: `box-${box}`, lookedOn, result },
      ...{ strength: null, food: null, note: null, queen: null },
    }),
  );

/** The evening of 30 May, K01 seen laying the day before, tomorrow's sheet printed. */
async function anEvening(): Promise<Desk> {
  const desk = onDay(aDeskWithBoxes(), '2026-05-30');
  look(desk, 1, '2026-05-29');
  await print(desk, '2026-05-31');
  return desk;
}

describe('printed yard sheets that no longer hold', () => {
  test('are none while nothing changed, whatever language and order of days are chosen afterwards', async () => {
    const desk = await anEvening();
    fill(desk, ({ settings }) => {
      settings.put('language', 'de');
      settings.put('dateOrder', 'month-first');
    });
    expect(listStaleSheets(desk)).toEqual([]);
  });

  test('are told when an old result is corrected: which line, and since when it is on paper', async () => {
    const desk = await anEvening();
    look(desk, 1, '2026-05-29', 'none');
    const [stale, ...others] = listStaleSheets(desk);
    expect(others).toEqual([]);
    expect(stale).toEqual({
      ...{ walkOn: '2026-05-31', yard: null, lines: 'walk', printedOn: '2026-05-30' },
      ...{ changed: ['K01'], leaveAlone: false },
    });
  });

  test('hold again when the correction is taken back, or a new one is printed', async () => {
    const desk = await anEvening();
    look(desk, 2, '2026-05-30');
    expect(listStaleSheets(desk).map(({ changed }) => changed)).toEqual([['K02']]);
    mustOk(removeLook(desk, { lookId: 'look-2' }));
    expect(listStaleSheets(desk)).toEqual([]);
    look(desk, 3, '2026-05-30');
    expect(listStaleSheets(desk)).toHaveLength(1);
    await print(desk, '2026-05-31');
    expect(listStaleSheets(desk)).toEqual([]);
  });

  test('are not made so by what the walk itself brought home, and are forgotten when it is over', async () => {
    const desk = await anEvening();
    const day = onDay(desk, '2026-05-31');
    look(day, 2, '2026-05-31');
    expect(listStaleSheets(day)).toEqual([]);
    look(day, 1, '2026-05-29', 'none');
    expect(listStaleSheets(day).map(({ changed }) => changed)).toEqual([['K01']]);
    expect(listStaleSheets(onDay(desk, '2026-06-01'))).toEqual([]);
  });

  test('tell that other boxes must be left alone when a box goes out of use', async () => {
    // Mating flights from 19 May: all six boxes of the batch are shut on 20 May.
    const desk = onDay(aDeskWithBoxes(), '2026-05-19');
    await print(desk, '2026-05-20');
    look(desk, 6, '2026-05-19', 'none');
    fill(desk, ({ placements }) => {
      const placement = placements.where({ boxId: 'box-6' })[0];
      if (placement) placements.update({ ...placement, endedOn: '2026-05-19', endReason: 'failed' });
    });
    expect(listStaleSheets(desk)).toMatchObject([{ changed: ['K06'], leaveAlone: true }]);
  });

  test('are not those that were only looked at, nor blank ones', async () => {
    const desk = onDay(aDeskWithBoxes(), '2026-05-30');
    mustOk(await printYardSheet(desk, { ...wish, walkOn: null, look: true }));
    mustOk(await printYardSheet(desk, { ...wish, walkOn: null, lines: 'blank' }));
    expect(desk.workbook.tables.settings.get('printedYardSheets')).toBeNull();
    await print(desk);
    expect(desk.workbook.tables.settings.get('printedYardSheets')).toHaveLength(1);
  });
});
