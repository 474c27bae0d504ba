import type { z } from 'zod';
import type { ErrandMade, MakeErrand } from '../../../shared/contract/errand.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { readBoxCodes } from '../../../shared/kernel/box-codes.ts';
import { isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { ERRAND_KEY, type Errand } from '../../../shared/model/errand.ts';
import type { MatingBox } from '../../../shared/model/mating-box.ts';
import { base64Of } from '../../exchange/file-bytes.ts';
import type { Tables } from '../../workbook/workbook.ts';
import type { Desk } from '../operation.ts';
import { workbookWords } from '../workbook-words.ts';
import { seenIn } from './errand-looks.ts';

/**
 * A small workbook with nothing but the named boxes and what their looks need, for someone else to type looks into. Notes
 * about hives and batches stay at home. Changes nothing here.
 */
export function makeErrand(desk: Desk, { boxes: typed }: z.infer<typeof MakeErrand>): Result<ErrandMade, Refusal> {
  const codes = readBoxCodes(typed);
  if (codes === null) return refuse({ kind: 'box-codes-unreadable', field: 'boxes', text: typed });
  const { workbook } = desk;
  const found = codes.map((code) => workbook.tables.boxes.where({ code })[0] ?? code);
  const missing = found.find((box) => typeof box === 'string');
  if (typeof missing === 'string') return refuse({ kind: 'box-not-found', field: 'boxes', code: missing });
  const boxes = found.filter((box): box is MatingBox => typeof box !== 'string' && box.retiredOn === null);
  if (boxes.length === 0) return refuse({ kind: 'no-box-for-errand', field: 'boxes' });
  const madeOn = isoOfDay(desk.today);
  const name = workbookWords(desk).errand.fileName(workbook.name, madeOn);
  const bytes = workbook.extract(name, (part) =>
    fillPart(part, workbook.tables, boxes, { from: workbook.name, madeOn }),
  );
  return ok({
    name: `${name}.ripecell`,
    mediaType: 'application/vnd.ripecell.workbook',
    base64: base64Of(bytes),
    boxes: boxes.map(({ code }) => code),
  });
}

function fillPart(
  part: Tables,
  home: Tables,
  boxes: readonly MatingBox[],
  errand: Pick<Errand, 'from' | 'madeOn'>,
): void {
  const boxIds = new Set(boxes.map(({ id }) => id));
  const placements = home.placements.where({ endedOn: null }).filter(({ boxId }) => boxIds.has(boxId));
  const held = new Set<string | null>(placements.map(({ id }) => id));
  const batches = [...new Set(placements.map(({ batchId }) => batchId))].flatMap((id) => home.batches.get(id) ?? []);
  const yardIds = new Set(boxes.flatMap(({ yardId }) => yardId ?? []));
  const hiveIds = new Set(batches.flatMap(({ breederId, builderId }) => [breederId, builderId]));
  for (const yard of home.yards.all()) if (yardIds.has(yard.id)) part.yards.insert(yard);
  for (const hive of home.colonies.all())
    if (hiveIds.has(hive.id)) part.colonies.insert({ ...hive, yardId: null, note: null });
  for (const batch of batches) addBatch(part, home, batch.id);
  for (const box of boxes) part.boxes.insert({ ...box, note: null });
  for (const placement of placements) part.placements.insert(placement);
  const looks = home.boxLooks.all().filter(({ placementId }) => held.has(placementId));
  for (const look of looks) part.boxLooks.insert(look);
  for (const queen of home.queens.all())
    if (queen.placementId !== null && held.has(queen.placementId))
      part.queens.insert({
        ...queen,
        boxId: queen.boxId !== null && boxIds.has(queen.boxId) ? queen.boxId : null,
        breederId: hiveIds.has(queen.breederId) ? queen.breederId : null,
        motherId: null,
        colonyId: null,
        goneTo: null,
        note: null,
      });
  part.settings.put(ERRAND_KEY, {
    ...errand,
    looks: Object.fromEntries(looks.map((look) => [look.id, JSON.stringify(seenIn(part, look))])),
  } satisfies Errand);
}

/** What a batch's days are reckoned from goes with it, so that the looks are warned about just as at home. */
function addBatch(part: Tables, home: Tables, batchId: string): void {
  const batch = home.batches.get(batchId);
  if (!batch) return;
  const copy = batch.methodCopyId === null ? null : home.methodCopies.get(batch.methodCopyId);
  if (copy && part.methodCopies.get(copy.id) === null) part.methodCopies.insert(copy);
  part.batches.insert({ ...batch, note: null, lesson: null });
  for (const bar of home.bars.where({ batchId })) part.bars.insert(bar);
  for (const done of home.stepsDone.where({ batchId })) part.stepsDone.insert(done);
  for (const move of home.stepMoves.where({ batchId })) part.stepMoves.insert(move);
  for (const drop of home.stepDrops.where({ batchId })) part.stepDrops.insert(drop);
  for (const seen of home.observations.where({ batchId })) part.observations.insert(seen);
}
