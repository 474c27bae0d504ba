import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exportTables } from '../../../../main/operations/files/export-tables.ts';
import { importWorkbook } from '../../../../main/operations/files/import-workbook.ts';
import { WHOLE_KEYS, wholeWorkbook } from '../../../../main/operations/files/whole-workbook.ts';
import type { Desk } from '../../../../main/operations/operation.ts';
import { notePaper } from '../../../../main/operations/print/note-paper.ts';
import { notedPapers } from '../../../../main/operations/print/noted-papers.ts';
import { saveSettings } from '../../../../main/operations/settings/save-settings.ts';
import { storedSettings } from '../../../../main/operations/stored-settings.ts';
import { anyWorkbook } from '../../../builders/any-workbook.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { handed } from '../../../builders/handed-table.ts';
import { aQueen } from '../../../builders/queen.ts';
import { aDeskWithBoxes, refusalOf } from '../../../builders/running-batch.ts';
import { aYard } from '../../../builders/yard.ts';

async function saved(desk: Desk) {
  const made = mustOk(await exportTables(desk, { format: 'json', table: 'all', separator: 'comma', mark: false }));
  return handed(Buffer.from(made.base64, 'base64'), made.name);
}
const changed = async (desk: Desk, change: (whole: ReturnType<typeof wholeWorkbook>) => unknown) => {
  const whole = structuredClone(wholeWorkbook(desk));
  change(whole);
  return handed(JSON.stringify(whole), 'everything.json');
};

/** All rows by id, so that the order of reading does not matter. */
function contentOf(desk: Desk) {
  const { tables, settings } = wholeWorkbook(desk);
  const sorted = WHOLE_KEYS.map((key) => [
    key,
    (tables[key] as readonly { id: string }[]).toSorted((a, b) => (a.id < b.id ? -1 : 1)),
  ]);
  return { ...Object.fromEntries(sorted), settings, tallies: tables.tallies };
}

/** The long form (RIPECELL_LONG=1) goes through 500 workbooks. */
const WORKBOOKS = process.env.RIPECELL_LONG ? 500 : 25;

describe('a file of everything', () => {
  test(`brings any workbook back without a difference (${WORKBOOKS} random ones)`, { timeout: 600_000 }, async () => {
    await fc.assert(
      fc.asyncProperty(anyWorkbook, async (fillIt) => {
        const from = aDesk();
        fill(from, fillIt);
        const file = await saved(from);
        const to = aDesk();
        mustOk(importWorkbook(to, { file }));
        expect(contentOf(to)).toEqual(contentOf(from));
        // And once more into the very workbook it came from: nothing to add, nothing to change.
        expect(mustOk(importWorkbook(from, { file }))).toEqual({ added: 0, changed: 0 });
        expect(contentOf(from)).toEqual(contentOf(to));
      }),
      { numRuns: WORKBOOKS },
    );
  });

  test('leaves alone who is typing here, and which papers were printed here', async () => {
    const [theirs, ours] = [aDesk(), aDesk()];
    mustOk(saveSettings(theirs, { people: ['Ben'], writer: 'Ben' }));
    mustOk(saveSettings(ours, { people: ['Anna'], writer: 'Anna' }));
    for (const desk of [theirs, ours]) {
      fill(desk, ({ colonies }) => colonies.insert(aColony({ id: 'h1', code: 'H01' })));
      mustOk(notePaper(desk, { paper: 'hive-page', colonyId: 'h1' }));
    }
    fill(theirs, ({ yards }) => yards.insert(aYard()));
    mustOk(notePaper(theirs, { paper: 'inspector-pages', yardId: null, year: 2026 }));
    mustOk(importWorkbook(ours, { file: await saved(theirs) }));
    const { tables } = ours.workbook;
    expect(tables.yards.all()).toHaveLength(1);
    expect(storedSettings(tables.settings)).toMatchObject({ people: ['Ben', 'Anna'], writer: 'Anna' });
    expect(ours.workbook.journal.steps(null, 1)[0]?.typedBy).toBe('Anna');
    expect(notedPapers(tables.settings).map(({ of }) => of.paper)).toEqual(['hive-page']);
  });

  test('writes over what was changed since, adds what is missing, and takes nothing away', async () => {
    const desk = aDeskWithBoxes();
    const file = await saved(desk);
    const before = contentOf(desk);
    fill(desk, ({ colonies, labelPrints, counts }) => {
      const hive = colonies.where({ code: 'H03' })[0];
      if (hive) colonies.update({ ...hive, name: 'renamed' });
      for (const { id } of labelPrints.all()) labelPrints.remove(id);
      const sealed = counts.where({ stage: 'sealed' })[0];
      if (sealed) counts.remove(sealed.id);
      colonies.insert(aColony({ id: 'new', code: 'H77' }));
    });
    expect(mustOk(importWorkbook(desk, { file }))).toEqual({ added: 1, changed: 1 });
    const { colonies, ...rest } = contentOf(desk);
    const { colonies: _, ...restBefore } = before;
    expect(rest).toEqual(restBefore);
    expect(desk.workbook.tables.colonies.where({ code: 'H77' }).length).toBe(1);
    expect(colonies.length).toBe(before.colonies.length + 1);
  });

  test('counts sums anew instead of believing them', async () => {
    const from = aDeskWithBoxes();
    const file = await changed(from, ({ tables }) => {
      const [tally] = tables.tallies;
      if (tally) tally.given = 199;
    });
    const to = aDesk();
    mustOk(importWorkbook(to, { file }));
    expect(to.workbook.tables.tallies.all()).toEqual(from.workbook.tables.tallies.all());
  });

  test('never writes over what says which file this is', async () => {
    const desk = aDesk();
    fill(desk, ({ settings }) => settings.put('weekStart', 'monday'));
    const odd = 'printer: Büro 2 (left)_x';
    const file = await changed(desk, (whole) => {
      whole.settings = { workbookName: 'stolen', heldAt: '2020-01-01', weekStart: 'sunday', [odd]: [1.5] };
    });
    mustOk(importWorkbook(desk, { file }));
    expect(desk.workbook.tables.settings.get('workbookName')).toBe('Memory');
    expect(desk.workbook.tables.settings.get('heldAt')).toBeNull();
    expect(desk.workbook.tables.settings.get('weekStart')).toBe('sunday');
    expect(desk.workbook.tables.settings.get(odd)).toEqual([1.5]);
  });
});

describe('nothing is written', () => {
  test.each([
    ['a row points nowhere', { batchId: 'gone' }],
    ['a field does not fit', { stage: 'hatched' }],
    ['an id stands twice', { id: 'taken' }],
  ])('when %s', async (_when, changes) => {
    const file = await changed(aDeskWithBoxes(), ({ tables }) => {
      const [first, second] = tables.counts;
      if (!first || !second) throw new Error('no counts');
      tables.counts[0] = { ...first, ...changes } as typeof first;
      if ('id' in changes) tables.counts[1] = { ...second, ...changes };
    });
    const desk = aDesk();
    expect(refusalOf(importWorkbook(desk, { file }))).toMatchObject({
      kind: 'rows-with-problems',
      first: expect.any(Number),
    });
    expect(desk.workbook.savedAt).toBeNull();
  });

  test('when a code belongs to another row of this workbook', async () => {
    const desk = aDesk();
    fill(desk, ({ colonies }) => colonies.insert(aColony({ id: 'mine', code: 'H03' })));
    const before = contentOf(desk);
    expect(refusalOf(importWorkbook(desk, { file: await saved(aDeskWithBoxes()) }))).toMatchObject({
      kind: 'rows-with-problems',
      rows: 1,
    });
    expect(contentOf(desk)).toEqual(before);
  });

  test.each([
    ['another JSON file', '{"hello": 1}', 'not-our-file'],
    ['a list', '[]', 'not-our-file'],
    ['a number', '7', 'not-our-file'],
    ['our format without its parts', '{"format":"ripecell-workbook","version":1,"name":"x"}', 'not-our-file'],
    ['a newer form', '{"format":"ripecell-workbook","version":2,"name":"x"}', 'newer-form'],
    ['half a file', '{"format":', 'not-json'],
  ])('of %s', (_what, text, reason) => {
    const desk = aDesk();
    const refused = refusalOf(importWorkbook(desk, { file: handed(text) }));
    expect(refused).toEqual({ kind: 'file-unreadable', field: 'file', trouble: { reason } });
    expect(desk.workbook.savedAt).toBeNull();
  });

  test('of names that would reach into every object', () => {
    const text = `{"format":"ripecell-workbook","version":1,"name":"x","exportedOn":"2026-01-01","tables":{},"settings":{},"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}}}`;
    const desk = aDesk();
    expect(mustOk(importWorkbook(desk, { file: handed(text) }))).toEqual({ added: 0, changed: 0 });
    const reaching = text.replace('"settings":{}', '"settings":{"__proto__":{"polluted":1}}');
    importWorkbook(desk, { file: handed(reaching) });
    expect(Reflect.get({}, 'polluted')).toBeUndefined();
    expect(desk.workbook.tables.settings.get('__proto__')).toBeNull();
  });
});

test('a batch whose days cannot be reckoned is declined with the whole file', async () => {
  const file = await changed(aDeskWithBoxes(), ({ tables }) => {
    const [batch] = tables.batches;
    if (batch) tables.batches[0] = { ...batch, sealedCelsius: 99 };
  });
  const desk = aDesk();
  expect(refusalOf(importWorkbook(desk, { file }))).toMatchObject({ trouble: { reason: 'contradicts' } });
  expect(desk.workbook.tables.yards.all()).toEqual([]);
  expect(desk.workbook.tables.batches.all()).toEqual([]);
});

test('a queen whose mother was written down after her comes back, and a ring of mothers is declined', async () => {
  const from = aDesk();
  fill(from, ({ queens }) => {
    queens.insert(aQueen({ id: 'daughter', number: '25-001', motherId: null }));
    queens.insert(aQueen({ id: 'mother', number: '23-001', motherId: null }));
    queens.update(aQueen({ id: 'daughter', number: '25-001', motherId: 'mother' }));
  });
  const to = aDesk();
  mustOk(importWorkbook(to, { file: await saved(from) }));
  expect(to.workbook.tables.queens.get('daughter')?.motherId).toBe('mother');
  const ring = await changed(from, ({ tables }) => {
    tables.queens[1] = aQueen({ id: 'mother', number: '23-001', motherId: 'daughter' });
  });
  const empty = aDesk();
  expect(refusalOf(importWorkbook(empty, { file: ring }))).toMatchObject({ trouble: { reason: 'contradicts' } });
  expect(empty.workbook.tables.queens.all()).toEqual([]);
});
