import { yearColour } from '../../../shared/biology/year-colour.ts';
import type { MotherRef, QueenLine } from '../../../shared/contract/queens.ts';
import type { Queen } from '../../../shared/model/queen.ts';
import { type Mother, motherOf } from '../../engine/pedigree/mother-lines.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { openPromise } from '../promise-lines.ts';
import { type Pedigree, readPedigree } from '../queen-pedigree.ts';

/** Reads lines of the register with what many queens share, mothers and the days of each batch, read once. */
export class QueenReader {
  readonly #tables: Tables;
  readonly pedigree: Pedigree;
  readonly #everPromised: ReadonlySet<string>;

  constructor(tables: Tables) {
    this.#tables = tables;
    this.pedigree = readPedigree(tables);
    this.#everPromised = new Set(tables.queenPromises.all().map(({ queenId }) => queenId));
  }

  line(queen: Queen): QueenLine {
    const tables = this.#tables;
    const colony = (id: string | null) => (id === null ? null : (tables.colonies.get(id)?.code ?? null));
    const known = this.pedigree.byId.get(queen.id);
    const mother = known ? motherOf(known, this.pedigree.stays) : null;
    return {
      queen,
      yearColour: yearColour(queen.bornIn),
      batch: queen.batchId === null ? null : (tables.batches.get(queen.batchId)?.code ?? null),
      breeder: colony(queen.breederId),
      box: queen.boxId === null ? null : (tables.boxes.get(queen.boxId)?.code ?? null),
      hive: colony(queen.colonyId),
      bornOn: queen.batchId === null ? null : (this.pedigree.bornOn.get(queen.batchId) ?? null),
      mother: mother && this.ref(mother),
      promise: this.#everPromised.has(queen.id) ? openPromise(tables, queen) : null,
    };
  }

  ref({ kind, id }: Mother): MotherRef | null {
    if (kind === 'queen') {
      const queen = this.#tables.queens.get(id);
      return queen && { kind, id, name: queen.number, line: queen.motherLine };
    }
    const colony = this.#tables.colonies.get(id);
    return colony && { kind, id, name: [colony.code, colony.name].filter(Boolean).join(' '), line: colony.motherLine };
  }
}
