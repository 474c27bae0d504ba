import { join } from 'node:path';
import { expect, test } from 'vitest';
import { listSteps } from '../../../../main/operations/history/list-steps.ts';
import { undo } from '../../../../main/operations/history/undo.ts';
import { getSettings } from '../../../../main/operations/settings/get-settings.ts';
import { beginWorkbook } from '../../../../main/operations/workbook/begin-workbook.ts';
import { deskOf } from '../../../../main/operations/workbook/lifecycle.ts';
import { refuse } from '../../../../shared/kernel/result.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aComputer, aLifecycle } from '../../../builders/lifecycle.ts';

test('a workbook is begun in the folder that was shown, and is then the open one', () => {
  const computer = aComputer();
  const state = mustOk(beginWorkbook(aLifecycle({}, computer), { name: 'Queens', folder: null }));
  expect(state.open).toMatchObject({ name: 'Queens', file: join(computer.documents, 'Queens.ripecell'), kind: 'real' });
});

test('a name in use and a missing folder are refused beside their fields', () => {
  const computer = aComputer();
  const lifecycle = aLifecycle({}, computer);
  mustOk(beginWorkbook(lifecycle, { name: 'Queens', folder: null }));
  expect(beginWorkbook(lifecycle, { name: 'Queens', folder: null })).toEqual(
    refuse({ kind: 'file-exists', field: 'name', file: join(computer.documents, 'Queens.ripecell') }),
  );
  const folder = join(computer.documents, 'no', 'such');
  expect(beginWorkbook(lifecycle, { name: 'Queens', folder })).toEqual(
    refuse({ kind: 'folder-not-found', field: 'folder', folder }),
  );
});

test('the habits that were shown are in it from the beginning, and no undo takes them out', () => {
  const lifecycle = aLifecycle({}, aComputer());
  const habits = { dateOrder: 'month-first', weekStart: 'sunday', temperature: 'fahrenheit', measures: 'us' } as const;
  mustOk(beginWorkbook(lifecycle, { name: 'Queens', folder: null, habits }));
  const desk = deskOf(lifecycle);
  if (!desk) throw new Error('nothing is open');
  expect(getSettings(desk)).toMatchObject(habits);
  expect(undo(desk)).toEqual(refuse({ kind: 'nothing-to-undo' }));
  expect(listSteps(desk, { before: null, limit: 9 }).steps.map(({ words }) => words)).toEqual([
    { did: 'begin-workbook' },
  ]);
});
