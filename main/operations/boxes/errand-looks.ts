import type { z } from 'zod';
import type { ErrandLook, LookSeen } from '../../../shared/contract/errand.ts';
import type { ImportedFile } from '../../../shared/contract/import.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { ERRAND_KEY, Errand } from '../../../shared/model/errand.ts';
import type { BoxLook } from '../../../shared/model/look.ts';
import { BoxLook as LookRecord } from '../../../shared/model/look.ts';
import { Queen } from '../../../shared/model/queen.ts';
import { bytesOf } from '../../exchange/file-bytes.ts';
import type { Tables } from '../../workbook/workbook.ts';
import type { Desk } from '../operation.ts';

/** What a look says, as it is compared and shown: not under which id it lies. */
export function seenIn(tables: Tables, look: BoxLook): LookSeen {
  return {
    result: look.result,
    strength: look.strength,
    food: look.food,
    note: look.note,
    queen: numbered(tables, look),
  };
}

/** The number that was given with this look. */
function numbered(tables: Tables, { placementId, lookedOn }: BoxLook): string | null {
  if (placementId === null) return null;
  return tables.queens.where({ placementId, markedOn: lookedOn })[0]?.number ?? null;
}

/** A look of the errand with how it stands to this workbook, and what is written when it is taken in. */
export interface JudgedLook {
  readonly shown: ErrandLook;
  readonly look: BoxLook;
  readonly queen: { readonly id: string; readonly number: string } | null;
}

export interface ReadErrand extends Pick<Errand, 'from' | 'madeOn'> {
  readonly looks: readonly JudgedLook[];
}

/** Reads an errand that came back, and sets each look against this workbook. */
export function readErrand({ workbook }: Desk, file: z.infer<typeof ImportedFile>): Result<ReadErrand, Refusal> {
  const unreadable = (reason: 'not-an-errand' | 'other-version' | 'damaged') =>
    refuse({ kind: 'errand-unreadable', field: 'file', reason } as const);
  const read = workbook.readExtract(bytesOf(file.base64), (part): ReadErrand | 'not-an-errand' | 'damaged' => {
    const errand = Errand.safeParse(part.settings.get(ERRAND_KEY));
    if (!errand.success) return 'not-an-errand';
    const looks = LookRecord.array().safeParse(part.boxLooks.all());
    if (!looks.success || !Queen.array().safeParse(part.queens.all()).success) return 'damaged';
    const judged = looks.data.map((look) => judge(workbook.tables, part, errand.data, look));
    return { from: errand.data.from, madeOn: errand.data.madeOn, looks: judged };
  });
  if (!read.ok) return unreadable(read.refusal === 'not-a-workbook' ? 'not-an-errand' : read.refusal);
  return typeof read.value === 'string' ? unreadable(read.value) : ok(read.value);
}

function judge(home: Tables, part: Tables, errand: Errand, look: BoxLook): JudgedLook {
  const theirs = seenIn(part, look);
  const box = home.boxes.get(look.boxId);
  const known = home.boxLooks.where({ boxId: look.boxId, lookedOn: look.lookedOn })[0];
  const mine = known ? seenIn(home, known) : null;
  const marked = theirs.queen === null ? undefined : part.queens.where({ number: theirs.queen })[0];
  const queen = marked && theirs.queen !== mine?.queen ? { id: marked.id, number: marked.number } : null;
  const shown = {
    lookId: look.id,
    box: box?.code ?? part.boxes.get(look.boxId)?.code ?? '?',
    on: look.lookedOn,
    standing: standingOf({ theirs, mine, wentOutAs: errand.looks[look.id] ?? null, hasBox: box !== null }),
    theirs,
    mine,
  };
  const taken = queen !== null && shown.standing !== 'same' && isTaken(home, queen, look);
  return { shown: taken ? { ...shown, standing: 'number-taken' } : shown, look, queen };
}

interface Sides {
  readonly theirs: LookSeen;
  readonly mine: LookSeen | null;
  readonly wentOutAs: string | null;
  readonly hasBox: boolean;
}

function standingOf({ theirs, mine, wentOutAs, hasBox }: Sides): ErrandLook['standing'] {
  const text = JSON.stringify(theirs);
  // Not touched while it was away: whatever was corrected or taken back at home since then stands.
  if (text === wentOutAs) return 'same';
  if (!hasBox) return 'no-such-box';
  if (mine === null) return 'new';
  return JSON.stringify(mine) === text ? 'same' : 'doubtful';
}

/** Another queen here has the number. */
function isTaken(home: Tables, queen: { readonly id: string; readonly number: string }, look: BoxLook): boolean {
  const other = home.queens.where({ number: queen.number })[0];
  return other !== undefined && other.id !== queen.id && other.placementId !== look.placementId;
}
