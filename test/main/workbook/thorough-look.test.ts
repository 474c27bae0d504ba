import { existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { lookThoroughly, onceForEach } from '../../../main/workbook/thorough-look.ts';
import type { CheckFile } from '../../../main/workbook/workbook.ts';
import { addYard, aKeeperWithClock } from '../../builders/copies.ts';
import { mustOk } from '../../builders/desk.ts';
import { aFolder } from '../../builders/workbook-file.ts';

function anOpenWorkbook() {
  const { keeper } = aKeeperWithClock();
  const workbook = mustOk(keeper.begin('Queens', null));
  addYard(workbook, 'a');
  return { keeper, workbook };
}

test('the pages are checked in a copy that is gone afterwards; what is typed meanwhile is saved and is in it', async () => {
  const { workbook } = anOpenWorkbook();
  const folder = join(aFolder(), 'looking');
  const asked: (string | null)[] = [];
  const check: CheckFile = async (file, digest) => {
    expect(existsSync(file)).toBe(true);
    asked.push(digest);
    return 'sound';
  };
  const looking = lookThoroughly(workbook, null, folder, check);
  addYard(workbook, 'b');
  expect(await looking).toBe('sound');
  expect(asked).toEqual([null]);
  expect(readdirSync(folder)).toEqual([]);
  expect(workbook.tables.yards.all().map(({ id }) => id)).toEqual(['a', 'b']);
});

test('a workbook closed meanwhile, or a place that cannot be written, is no damage', async () => {
  const { keeper, workbook } = anOpenWorkbook();
  const never: CheckFile = () => Promise.reject(new Error('nothing to check'));
  const blocked = join(aFolder(), 'file');
  writeFileSync(blocked, '');
  expect(await lookThoroughly(workbook, null, join(blocked, 'below'), never)).toBeNull();
  const folder = join(aFolder(), 'looking');
  mkdirSync(folder);
  const looking = lookThoroughly(workbook, null, folder, never);
  keeper.stop();
  expect(await looking).toBeNull();
  expect(readdirSync(folder)).toEqual([]);
});

test('one look at a time, and one that could not be made is tried once more', async () => {
  const { workbook } = anOpenWorkbook();
  let looks = 0;
  let end = (): void => {};
  const look = () => {
    looks += 1;
    return new Promise<null>((resolve) => {
      end = () => resolve(null);
    });
  };
  const check = onceForEach(look);
  for (const expected of [1, 2, 2]) {
    const running = check.run(workbook, null);
    await check.run(workbook, null);
    expect(looks).toBe(expected);
    end();
    await running;
  }
  expect(check.found(workbook)).toBeNull();
});
