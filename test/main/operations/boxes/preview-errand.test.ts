import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { previewErrand } from '../../../../main/operations/boxes/preview-errand.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aTypedLook, errandTypedInto, look } from '../../../builders/errand.ts';
import { aDeskWithBoxes, onDay, refusalOf } from '../../../builders/running-batch.ts';

const home = () => onDay(aDeskWithBoxes(), '2026-06-06');

test('tells new looks, those that are here, and those that differ', () => {
  const desk = home();
  look(desk, aTypedLook(4, 'virgin', { lookedOn: '2026-05-20' }));
  const file = errandTypedInto(desk, 'K01-K06', (there) => {
    look(there, aTypedLook(1, 'laying'));
    look(there, aTypedLook(2, 'none', { note: 'ants' }));
    look(there, aTypedLook(3, 'laying'));
  });
  look(desk, aTypedLook(2, 'laying', { id: 'mine' }));
  look(desk, aTypedLook(3, 'laying', { id: 'also mine' }));
  const { looks, same, from } = mustOk(previewErrand(desk, { file }));
  expect(from).toBe('Memory');
  expect(looks).toMatchObject([
    { box: 'K01', standing: 'new', theirs: { result: 'laying' }, mine: null },
    { box: 'K02', standing: 'doubtful', theirs: { result: 'none', note: 'ants' }, mine: { result: 'laying' } },
  ]);
  // K03 was seen alike by both, K04 went out with the errand and came back as it was.
  expect(same).toBe(2);
});

test('a look corrected at home after it went out stands, if nobody touched it there', () => {
  const desk = home();
  look(desk, aTypedLook(1, 'virgin', { lookedOn: '2026-05-20' }));
  const file = errandTypedInto(desk, 'K01', () => {});
  look(desk, aTypedLook(1, 'queen', { lookedOn: '2026-05-20' }));
  expect(mustOk(previewErrand(desk, { file }))).toMatchObject({ looks: [], same: 1 });
});

test.each([
  ['no file of SQLite', Buffer.from('nothing'), 'not-an-errand'],
  ['an empty file', Buffer.alloc(0), 'not-an-errand'],
  ['another SQLite file', otherFile(), 'not-an-errand'],
] as const)('declines %s', (_what, bytes, reason) => {
  const file = { name: 'x.ripecell', base64: bytes.toString('base64') };
  expect(refusalOf(previewErrand(home(), { file }))).toEqual({ kind: 'errand-unreadable', field: 'file', reason });
});

test('declines an errand that was harmed, at any place', () => {
  const desk = home();
  const whole = Buffer.from(
    errandTypedInto(desk, 'K01-K06', (there) => look(there, aTypedLook(1, 'laying'))).base64,
    'base64',
  );
  for (const at of [60, 100, 5000, whole.length / 2, whole.length - 3000]) {
    const harmed = Buffer.from(whole);
    harmed.fill(0xa5, at, at + 400);
    const file = { name: 'x.ripecell', base64: harmed.toString('base64') };
    const read = previewErrand(desk, { file });
    // Harm in a page that holds nothing changes nothing; else it is declined, and never throws.
    if (read.ok) expect(read.value.looks).toMatchObject([{ box: 'K01', theirs: { result: 'laying' } }]);
    else expect(read.refusal).toMatchObject({ kind: 'errand-unreadable' });
  }
  const cut = { name: 'x.ripecell', base64: whole.subarray(0, 3000).toString('base64') };
  expect(refusalOf(previewErrand(desk, { file: cut }))).toMatchObject({ kind: 'errand-unreadable' });
});

function otherFile(): Buffer {
  const db = new Database(':memory:');
  db.exec('CREATE TABLE box_look (id TEXT)');
  const bytes = db.serialize();
  db.close();
  return bytes;
}
