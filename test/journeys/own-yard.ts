// A yard of one's own for the flows: told to the core by its operations, through the same door the page uses.
import type { Page } from 'playwright';
import { aStart } from '../builders/running-batch.ts';
import { setDay } from './doors.ts';

export const LARVAE_ON = '2026-05-04';
export const COUNTED_ON = '2026-05-05';
export const PLACED_ON = '2026-05-14';
/** Five days after the first look begins; 24 days after larvae were given. */
export const LOOKED_ON = '2026-05-28';

export async function ask(page: Page, kind: 'query' | 'mutation', path: string, input?: unknown): Promise<unknown> {
  const reply = await page.evaluate(
    async (request) => {
      const headers = { 'content-type': 'application/json' };
      return (await fetch('/call', { method: 'POST', headers, body: JSON.stringify(request) })).json();
    },
    { kind, path, input },
  );
  const { ok, data, error } = reply as { ok: boolean; data: { ok?: boolean; value?: unknown }; error: unknown };
  if (!ok || data?.ok === false) throw new Error(`${path}: ${JSON.stringify(error ?? data)}`);
  return data && typeof data === 'object' && 'value' in data ? data.value : data;
}

const ids = (name: string, count: number) => Array.from({ length: count }, (_, index) => `${name}-${index + 1}`);

export async function beginWorkbook(page: Page, name = 'Our queens'): Promise<void> {
  await page.getByLabel('Name', { exact: true }).fill(name);
  await page.getByRole('button', { name: 'Begin my workbook' }).click();
  await page.getByRole('heading', { level: 1, name: 'Today' }).waitFor();
}

/** An empty workbook with breeder H03 Anna, builder H12, and boxes K01 to K30 beside the fence. */
export async function beginYard(page: Page, today: string): Promise<void> {
  setDay(today);
  await beginWorkbook(page);
  const hive = { yardId: null, place: null, motherLine: null, endedOn: null, note: null };
  for (const [id, code, name, role] of [
    ['h03', 'H03', 'Anna', 'breeder'],
    ['h12', 'H12', null, 'builder'],
  ] as const) {
    await ask(page, 'mutation', 'hives.saveHive', { ...hive, id, code, name });
    await ask(page, 'mutation', 'hives.setRoles', { colonyId: id, season: 2026, roles: [role], ids: [`role-${id}`] });
  }
  const boxes = { codes: 'K01-K30', yardId: null, row: 'fence', boxType: 'mini' };
  await ask(page, 'mutation', 'boxes.addBoxes', { ...boxes, ids: ids('box', 30) });
}

/** Larva grafting from H03 in H12, 60 cells on three bars, larvae given on 4 May. */
export async function beginBatch(page: Page): Promise<void> {
  const hives = { breederId: 'h03', builderId: 'h12', newBreeder: null, newBuilder: null };
  const method = { method: 'larva-grafting', comb: null } as const;
  await ask(
    page,
    'mutation',
    'batches.startBatch',
    aStart({ ...method, ...hives, anchorOn: LARVAE_ON, cellsPlanned: 60, bars: 3 }),
  );
}

/** Forty of sixty taken, thirty-six sealed. */
export async function countBars(page: Page): Promise<void> {
  const batch = (await ask(page, 'query', 'batches.getBatch', { batchId: 'batch-1' })) as {
    bars: readonly { barId: string }[];
  };
  for (const { barId } of batch.bars) {
    const counts = { given: 20, taken: 14, removed: null, sealed: 12 };
    await ask(page, 'mutation', 'batches.recordBarCounts', {
      batchId: 'batch-1',
      barId,
      countedOn: COUNTED_ON,
      ...counts,
    });
  }
}

export async function placeCells(page: Page, boxes: string, count: number): Promise<void> {
  const cells = { batchId: 'batch-1', boxes, placedOn: PLACED_ON, barId: null };
  await ask(page, 'mutation', 'boxes.placeCells', { ...cells, ids: ids('placement', count) });
}

/** The day goes on and the page is asked anew. */
export async function comeBackOn(page: Page, today: string): Promise<void> {
  setDay(today);
  await page.reload();
  await page.locator('main h1').waitFor();
}
