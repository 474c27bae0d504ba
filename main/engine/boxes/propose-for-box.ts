import { BOX_TURNAROUND, LOOKS_TO_BE_SURE, WEAK_STRENGTH } from '../../../shared/biology/box-turnaround.ts';
import { addDays, type Day, laterOf } from '../../../shared/kernel/day.ts';
import type { BoxProposal, ProposalKind, ProposalReason } from '../../../shared/model/box-proposal.ts';
import { type BoxStanding, broodlessDays, lastLookOf, openDay, type StandingLook, strengthOf } from './box-standing.ts';

/**
 * What to do with a box that holds a cell or queen, with the reasons; null where its own timetable says enough. Figures
 * and their sources are the rows of shared/biology/box-turnaround. Looks are facts: only what was seen leads to a
 * proposal that ends the cell's story, while missing looks lead to another look at most.
 */
export function proposeForBox(box: BoxStanding): BoxProposal | null {
  const last = lastLookOf(box);
  const age = box.today - box.emergenceOn;
  if (last === null)
    return box.today >= box.giveUpOn ? lookAgain(box, box.today, [{ kind: 'never-looked', age }]) : null;
  switch (last.result) {
    case 'proved':
      return age >= BOX_TURNAROUND.ageToTake.value ? takeHer(box, last.on, age) : null;
    case 'gone':
      return proposal('re-use', box, [{ kind: 'bees-gone', on: last.on }], box.today);
    case 'drone-layer':
      return afterDroneLayer(box, last.on);
    case 'cell-failed':
      return withoutQueen(box, [{ kind: 'cell-failed', on: last.on }]);
    case 'none':
      return afterNoQueen(box, last.on);
    case 'cell':
      return afterClosedCell(box, last, age);
    case 'virgin':
    case 'queen':
    case 'out':
      return afterNoEggs(box, last, age);
    default:
      return null;
  }
}

function takeHer(box: BoxStanding, on: Day, age: number): BoxProposal {
  const freeFrom = addDays(box.today, BOX_TURNAROUND.daysToNextCell.value);
  return { ...proposal('re-use', box, [{ kind: 'proved', on, age }], freeFrom), cells: box.cellsComing };
}

function afterNoQueen(box: BoxStanding, on: Day): BoxProposal {
  const looks = box.looks.length - 1 - box.looks.findLastIndex((look) => look.result !== 'none');
  if (looks < LOOKS_TO_BE_SURE && box.today < box.giveUpOn)
    return lookAgain(box, addDays(on, BOX_TURNAROUND.lookAgain.value), [{ kind: 'may-be-missed', on }]);
  return withoutQueen(box, [{ kind: 'no-queen', looks, on }]);
}

function afterClosedCell(box: BoxStanding, { on }: StandingLook, age: number): BoxProposal | null {
  const closedAt = on - box.emergenceOn;
  if (closedAt < BOX_TURNAROUND.closedCell.value) return null;
  return withoutQueen(box, [{ kind: 'cell-closed', on, age }]);
}

/** A queen or virgin was seen, or only her empty cell; no eggs so far. */
function afterNoEggs(box: BoxStanding, last: StandingLook, age: number): BoxProposal | null {
  const seenLate = last.result !== 'out' && last.on >= box.lateOn;
  if (box.today >= box.giveUpOn)
    return seenLate
      ? withoutQueen(box, [{ kind: 'given-up', age }])
      : lookAgain(box, box.today, [{ kind: 'no-eggs-yet', on: last.on, age }]);
  if (last.result === 'out' || last.on < box.firstLook.earliest) return null;
  const reasons: ProposalReason[] = [{ kind: 'no-eggs-yet', on: last.on, age }];
  if (box.today >= box.lateOn) reasons.push({ kind: 'late', age });
  return lookAgain(box, addDays(last.on, BOX_TURNAROUND.lookAgain.value), reasons);
}

/** Her bees are old and raise drones only: worth another cell when strong and one is at hand, else shaken out. */
function afterDroneLayer(box: BoxStanding, on: Day): BoxProposal {
  const seen: ProposalReason = { kind: 'drone-layer', on };
  const strength = strengthOf(box);
  if (box.cellsComing && strength !== null && strength > WEAK_STRENGTH) return giveCell(box, [seen]);
  return proposal('shake-out', box, strength === null ? [seen] : [seen, ...weakness(strength)], box.today);
}

function withoutQueen(box: BoxStanding, reasons: readonly ProposalReason[]): BoxProposal {
  const { value: mayLay, range } = BOX_TURNAROUND.layingWorkers;
  const broodless = broodlessDays(box);
  const strength = strengthOf(box);
  const weak = strength === null ? [] : weakness(strength);
  const laying: readonly ProposalReason[] =
    broodless >= mayLay ? [{ kind: 'laying-workers', broodlessDays: broodless }] : [];
  if (broodless >= range[1]) return proposal('shake-out', box, [...reasons, ...laying], box.today);
  if (box.cellsComing && weak.length === 0 && laying.length === 0 && arrivesInTime(box, broodless))
    return giveCell(box, reasons);
  const none: readonly ProposalReason[] = box.cellsComing ? [] : [{ kind: 'no-cells-coming' }];
  return proposal('unite', box, [...reasons, ...weak, ...laying, ...none], box.today);
}

const arrivesInTime = ({ today, cellsComing }: BoxStanding, broodless: number): boolean =>
  cellsComing !== null && broodless + (cellsComing.on - today) < BOX_TURNAROUND.layingWorkers.value;

const weakness = (strength: number): readonly ProposalReason[] =>
  strength <= WEAK_STRENGTH ? [{ kind: 'weak', strength }] : [];

function giveCell(box: BoxStanding, reasons: readonly ProposalReason[]): BoxProposal {
  const { cellsComing } = box;
  if (cellsComing === null) return proposal('unite', box, reasons, box.today);
  const coming: ProposalReason = { kind: 'cells-coming', batch: cellsComing.batch, on: cellsComing.on };
  return { ...proposal('give-cell', box, [...reasons, coming], box.today), cells: cellsComing };
}

const proposal = (
  kind: ProposalKind,
  box: BoxStanding,
  reasons: readonly ProposalReason[],
  freeFrom: Day,
): BoxProposal => ({ kind, on: box.today, freeFrom, cells: null, reasons });

const lookAgain = (box: BoxStanding, on: Day, reasons: readonly ProposalReason[]): BoxProposal => ({
  kind: 'look-again',
  on: openDay(box, laterOf(on, box.today)),
  freeFrom: null,
  cells: null,
  reasons,
});
