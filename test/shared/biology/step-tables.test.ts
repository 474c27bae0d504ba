import { describe, expect, it } from 'vitest';
import { BOX_STEPS } from '../../../shared/biology/box-steps.ts';
import { BUILDER_CAPACITY } from '../../../shared/biology/builder-capacity.ts';
import { BUILDER_STEPS } from '../../../shared/biology/builder-steps.ts';
import { LARVA_SIZES } from '../../../shared/biology/larva-size.ts';
import { METHOD_FIGURES } from '../../../shared/biology/method-figures.ts';
import { METHOD_TABLES } from '../../../shared/biology/method-steps.ts';
import { STEPS_IN_ORDER } from '../../../shared/biology/step-order.ts';

const { 'cut-comb-edge': cutComb, ...others } = METHOD_TABLES;
const METHOD_LIST = [...Object.entries(others), ...Object.entries(cutComb)];
const TABLES = [
  ...METHOD_LIST.map(([name, table]) => ({ name, rows: [...table.head, ...table.tail] })),
  ...Object.entries(BUILDER_STEPS).map(([name, rows]) => ({ name, rows })),
  ...Object.entries(BOX_STEPS).map(([name, rows]) => ({ name, rows })),
];

describe.each(TABLES)('the step table $name', ({ rows }) => {
  it('has rising whole days, a source and a step only once', () => {
    for (const { days, source, step } of rows) {
      expect([step, days]).toEqual([step, days.toSorted((a, b) => a - b)]);
      expect(days.every(Number.isInteger)).toBe(true);
      expect(source.length).toBeGreaterThan(10);
    }
    expect(new Set(rows.map((row) => row.step)).size).toBe(rows.length);
  });

  it('gives minutes for every job and for nothing else', () => {
    for (const { kind, minutes, step } of rows) expect([step, minutes !== null]).toEqual([step, kind === 'job']);
  });
});

describe.each(METHOD_LIST)('the method %s', (_name, table) => {
  it('holds the steps that fix its day 0', () => {
    const steps = [...table.head, ...table.tail].map((row) => row.step);
    expect(table.fixedBy.filter((step) => !steps.includes(step))).toEqual([]);
    expect(table.fixedBy.length).toBeGreaterThan(0);
  });
});

describe('the order of steps', () => {
  it('never asks for a step both before and after another', () => {
    const pairs = new Set(STEPS_IN_ORDER.map(([before, after]) => `${before}>${after}`));
    expect(STEPS_IN_ORDER.filter(([before, after]) => pairs.has(`${after}>${before}`))).toEqual([]);
  });
});

describe('larva sizes', () => {
  it('cover every age from hatching on without a gap', () => {
    const gaps = LARVA_SIZES.slice(1).filter((size, index) => size.hours[0] > (LARVA_SIZES[index]?.hours[1] ?? 0));
    expect(gaps).toEqual([]);
    expect(LARVA_SIZES[0].hours[0]).toBe(0);
  });
});

describe('the usual number of cells', () => {
  it('lies within what the sources say, and starts one builder at most', () => {
    for (const [method, { cells }] of Object.entries(METHOD_FIGURES)) {
      expect([method, cells.value]).toSatisfy(() => cells.value >= cells.range[0] && cells.value <= cells.range[1]);
      expect(cells.value).toBeLessThanOrEqual(BUILDER_CAPACITY.cellsToFinish.value);
    }
  });
});
