import type { MotherLineNode } from '../../../shared/contract/queens.ts';
import { compareCodes } from '../../../shared/kernel/box-codes.ts';
import { type LineNode, motherLines } from '../../engine/pedigree/mother-lines.ts';
import type { Desk } from '../operation.ts';
import { QueenReader } from './queen-lines.ts';

/** All queens as trees by their mothers, each tree in the order of its numbers; larger trees are not put first. */
export function listMotherLines({ workbook: { tables } }: Desk): readonly MotherLineNode[] {
  const reader = new QueenReader(tables);
  const toNode = (node: LineNode): readonly MotherLineNode[] => {
    const ref = reader.ref(node);
    const queen = node.kind === 'queen' ? tables.queens.get(node.id) : null;
    return ref ? [{ ref, queen: queen && reader.line(queen), daughters: inOrder(node.daughters.flatMap(toNode)) }] : [];
  };
  return inOrder(motherLines([...reader.pedigree.byId.values()], reader.pedigree.stays).flatMap(toNode));
}

const inOrder = (nodes: readonly MotherLineNode[]): readonly MotherLineNode[] =>
  nodes.toSorted((a, b) => compareCodes(a.ref.name, b.ref.name));
