import { existsSync } from 'node:fs';
import { expect, test } from 'vitest';
import { makeCopy } from '../../../../main/operations/copies/make-copy.ts';
import { refuse } from '../../../../shared/kernel/result.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aLifecycle } from '../../../builders/lifecycle.ts';

test('a copy made by hand lies there and says so', () => {
  const lifecycle = aLifecycle();
  mustOk(lifecycle.keeper.begin('Queens', null));
  const copy = mustOk(makeCopy(lifecycle));
  expect(copy.purpose).toBe('by-hand');
  expect(existsSync(copy.file)).toBe(true);
});

test('without a workbook of one’s own there is nothing to copy', () => {
  expect(makeCopy(aLifecycle())).toEqual(refuse({ kind: 'no-workbook-to-copy' }));
});
