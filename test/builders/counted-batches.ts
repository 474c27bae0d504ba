import { startBatch } from '../../main/operations/batches/start-batch.ts';
import { saveHive } from '../../main/operations/hives/save-hive.ts';
import type { Desk } from '../../main/operations/operation.ts';
import type { Method } from '../../shared/model/method.ts';
import type { BatchTally } from '../../shared/model/tally.ts';
import { aColony } from './colony.ts';
import { aDesk, fill, mustOk } from './desk.ts';
import { aStart } from './running-batch.ts';

/** What a batch came to, of which only what matters is named. */
export interface Told {
  readonly method?: Method;
  readonly builder?: string;
  readonly breeder?: string;
  readonly tally: Partial<Omit<BatchTally, 'batchId'>>;
}

const NOTHING_KNOWN = {
  given: null,
  taken: null,
  enteredSealing: null,
  sealed: null,
  placed: 0,
  emergenceKnown: 0,
  emerged: 0,
  matingKnown: 0,
  proved: 0,
  laying: 0,
};

/** A workbook with batches a season apart (2001, 2002 ...), so that no builder is in use; batch n has id `b2000+n`. */
export function aDeskWithCounted(told: readonly Told[]): Desk {
  const desk = aDesk({ today: '2030-12-01' });
  for (const code of new Set(told.flatMap(({ builder = 'H12', breeder = 'H03' }) => [builder, breeder])))
    mustOk(saveHive(desk, aColony({ id: code, code })));
  told.forEach(({ method = 'cut-comb-edge', builder = 'H12', breeder = 'H03', tally }, index) => {
    const id = `b${2001 + index}`;
    const hives = { newBreeder: null, newBuilder: null, breederId: breeder, builderId: builder };
    mustOk(startBatch(desk, aStart({ id, method, anchorOn: `${2001 + index}-05-04`, ...hives })));
    fill(desk, (tables) => tables.tallies.put({ batchId: id, ...NOTHING_KNOWN, ...tally }));
  });
  return desk;
}

/** A batch counted through: given, taken, sealed, placed in boxes, emerged, proved. */
export const through = (
  given: number,
  taken: number,
  sealed: number,
  emerged: number,
  proved: number,
): Told['tally'] => ({
  given,
  taken,
  enteredSealing: taken,
  sealed,
  placed: sealed,
  emergenceKnown: sealed,
  emerged,
  matingKnown: emerged,
  proved,
  laying: proved,
});
