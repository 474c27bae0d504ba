import { expect, test } from 'vitest';
import { getWorkbookState } from '../../../../main/operations/workbook/get-workbook-state.ts';
import { ok } from '../../../../shared/kernel/result.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aClock, aComputer, aLifecycle, NOON } from '../../../builders/lifecycle.ts';
import { aYard } from '../../../builders/yard.ts';

test('before anything was begun, the page learns where a workbook would go', () => {
  const computer = aComputer();
  expect(getWorkbookState(aLifecycle({}, computer))).toEqual({
    open: null,
    computerLanguage: 'en',
    missing: null,
    notOpened: null,
    recent: [],
    usualFolder: computer.documents,
    version: '0.1.0',
  });
});

test('an open workbook is named with its day, its season and the instant of the last save', () => {
  const lifecycle = aLifecycle({ clock: aClock('2027-01-02') });
  const workbook = mustOk(lifecycle.keeper.begin('Queens', null));
  const { file } = workbook;
  const state = { name: 'Queens', file, kind: 'real', readOnly: false, ...ORDINARY, today: '2027-01-02', season: 2027 };
  expect(getWorkbookState(lifecycle).open).toEqual({ ...state, savedAt: null });
  mustOk(workbook.change({ did: 'other' }, ({ yards }) => ok(yards.insert(aYard()))));
  expect(getWorkbookState(lifecycle).open).toEqual({ ...state, savedAt: NOON });
});

const ORDINARY = { readOnlyBecause: null, riskyPlace: null, harm: null, lookingAt: null };
