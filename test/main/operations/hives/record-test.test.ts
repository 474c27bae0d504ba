import { expect, test } from 'vitest';
import { recordTest } from '../../../../main/operations/hives/record-test.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { refusalOf } from '../../../builders/running-batch.ts';
import { aTest } from '../../../builders/stock.ts';

function aDeskWithHive() {
  const desk = aDesk();
  fill(desk, ({ colonies }) => colonies.insert(aColony()));
  return desk;
}

test('keeps tests, and corrects one under the same id', () => {
  const desk = aDeskWithHive();
  mustOk(recordTest(desk, aTest()));
  mustOk(recordTest(desk, aTest({ counted: 50 })));
  mustOk(recordTest(desk, aTest({ id: 'honey', kind: 'honey', counted: 31.5, outOf: null, hours: null })));
  // More mites than bees is odd but possible in a sample of a few bees.
  mustOk(recordTest(desk, aTest({ id: 'wash', kind: 'mite-wash', counted: 12, outOf: 10, hours: null })));
  expect(desk.workbook.tables.stockTests.all().map(({ id, counted }) => [id, counted])).toEqual([
    ['test-1', 50],
    ['honey', 31.5],
    ['wash', 12],
  ]);
});

test('refuses a share of nothing, more cleared than tested, and a hive that is gone', () => {
  const desk = aDeskWithHive();
  const refused = (changes: Parameters<typeof aTest>[0]) => refusalOf(recordTest(desk, aTest(changes)));
  expect(refused({ outOf: null })).toEqual({ kind: 'out-of-needed', field: 'outOf' });
  expect(refused({ counted: 51 })).toEqual({
    kind: 'more-cleared-than-tested',
    field: 'counted',
    counted: 51,
    outOf: 50,
  });
  expect(refused({ colonyId: 'gone' })).toEqual({ kind: 'hive-missing', field: 'colonyId' });
  expect(desk.workbook.tables.stockTests.all()).toEqual([]);
});
