import type { HiveRelatives } from '../../../shared/contract/hives.ts';
import { compareCodes } from '../../../shared/kernel/box-codes.ts';
import type { Day } from '../../../shared/kernel/day.ts';
import type { Colony } from '../../../shared/model/colony.ts';
import { headOn } from '../../engine/pedigree/hive-stays.ts';
import { type KinHive, relationOf } from '../../engine/pedigree/kinship.ts';
import { type Mother, motherOf } from '../../engine/pedigree/mother-lines.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { type Pedigree, readPedigree } from '../queen-pedigree.ts';

/** A hive as kin: the queen that heads it today, and her mother. */
export function asKin({ id, motherLine }: Colony, { byId, stays }: Pedigree, today: Day): KinHive {
  const queenId = headOn(stays, id, today);
  const queen = queenId === null ? undefined : byId.get(queenId);
  return { colonyId: id, queenId, mother: queen ? motherOf(queen, stays) : null, line: motherLine };
}

/** The queen of a hive, her mother, and the living hives that are kin to it, by code. */
export function relativesOf(tables: Tables, colony: Colony, today: Day): HiveRelatives {
  const pedigree = readPedigree(tables);
  const kin = asKin(colony, pedigree, today);
  const queen = kin.queenId === null ? null : tables.queens.get(kin.queenId);
  const hives = tables.colonies.where({ endedOn: null }).flatMap((other) => {
    const how = relationOf(kin, asKin(other, pedigree, today));
    return how === null ? [] : [{ id: other.id, code: other.code, name: other.name, how }];
  });
  return {
    queen: queen && { id: queen.id, number: queen.number },
    mother: kin.mother && motherRef(tables, kin.mother),
    hives: hives.toSorted((a, b) => compareCodes(a.code, b.code)),
  };
}

function motherRef(tables: Tables, { kind, id }: Mother): HiveRelatives['mother'] {
  const name = kind === 'queen' ? tables.queens.get(id)?.number : tables.colonies.get(id)?.code;
  return name === undefined ? null : { kind, id, name };
}
