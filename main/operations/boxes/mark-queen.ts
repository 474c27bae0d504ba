import type { z } from 'zod';
import type { RecordLook } from '../../../shared/contract/boxes.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { yearOfDay } from '../../../shared/kernel/day.ts';
import type { MatingBox, Placement } from '../../../shared/model/mating-box.ts';
import type { Queen } from '../../../shared/model/queen.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { timetableOf } from '../batch-calendar.ts';

interface Found {
  readonly box: MatingBox;
  readonly placement: Placement | null;
  readonly typed: z.infer<typeof RecordLook>;
}

/** Gives the queen in a box her number, with all that the box and batch already know of her. */
export function markQueen(
  tables: Tables,
  mark: { readonly id: string; readonly number: string },
  found: Found,
): Refusal | null {
  const other = tables.queens.where({ number: mark.number })[0];
  const known = found.placement ? tables.queens.where({ placementId: found.placement.id })[0] : undefined;
  if (other && other.id !== mark.id && other.id !== known?.id)
    return { kind: 'queen-number-taken', field: 'queen', number: mark.number };
  const queen = queenFrom(tables, { id: known?.id ?? mark.id, number: mark.number }, found, known);
  if (known) tables.queens.update(queen);
  else tables.queens.insert(queen);
  return null;
}

function queenFrom(
  tables: Tables,
  mark: { readonly id: string; readonly number: string },
  { box, placement, typed }: Found,
  known: Queen | undefined,
): Queen {
  const batch = placement ? tables.batches.get(placement.batchId) : null;
  const breeder = batch?.breederId ? tables.colonies.get(batch.breederId) : null;
  const born = batch ? timetableOf(tables, batch).emergence.expected : null;
  const eggsOn = firstEggs(tables, placement, typed.lookedOn);
  return {
    id: mark.id,
    number: mark.number,
    bornIn: born === null ? Number(typed.lookedOn.slice(0, 4)) : yearOfDay(born),
    placementId: placement?.id ?? null,
    batchId: batch?.id ?? null,
    breederId: breeder?.id ?? null,
    motherId: known?.motherId ?? null,
    motherLine: breeder?.motherLine ?? null,
    markedOn: known?.markedOn ?? typed.lookedOn,
    firstEggsOn: known?.firstEggsOn ?? eggsOn,
    provedOn: known?.provedOn ?? (typed.result === 'proved' ? typed.lookedOn : null),
    // Where a known queen went is the person's to say; a look typed late must not put her back in the box.
    place: known?.place ?? 'in-box',
    boxId: known ? known.boxId : box.id,
    colonyId: known?.colonyId ?? null,
    goneTo: known?.goneTo ?? null,
    note: known?.note ?? null,
  };
}

/** The first look at which eggs or brood of hers were seen. */
function firstEggs(tables: Tables, placement: Placement | null, upTo: string): string | null {
  if (!placement) return null;
  const days = tables.boxLooks
    .where({ placementId: placement.id })
    .filter((look) => (look.result === 'laying' || look.result === 'proved') && look.lookedOn <= upTo)
    .map((look) => look.lookedOn);
  return days.toSorted()[0] ?? null;
}
