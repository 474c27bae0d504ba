import { expect, test } from 'vitest';
import { awaySpans, withoutSpan, withSpan } from '../../../../renderer/features/settings/away-days.ts';

test('days that follow one another are one span, over the end of a month too', () => {
  expect(awaySpans(['2026-06-01', '2026-05-31', '2026-05-30', '2026-06-10', '2026-06-10'])).toEqual([
    { from: '2026-05-30', to: '2026-06-01' },
    { from: '2026-06-10', to: '2026-06-10' },
  ]);
  expect(awaySpans([])).toEqual([]);
});

test('a span is added once, either way round, and taken away again', () => {
  const days = withSpan(['2026-06-03'], { from: '2026-06-04', to: '2026-06-02' });
  expect(days).toEqual(['2026-06-02', '2026-06-03', '2026-06-04']);
  expect(withoutSpan(days ?? [], { from: '2026-06-03', to: '2026-06-04' })).toEqual(['2026-06-02']);
});

test('a stay of a hundred days is taken, one longer is not', () => {
  expect(withSpan([], { from: '2026-01-01', to: '2026-04-10' })).toHaveLength(100);
  expect(withSpan([], { from: '2026-01-01', to: '2026-04-11' })).toBeNull();
});
