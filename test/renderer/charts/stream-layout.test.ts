import { describe, expect, test } from 'vitest';
import { layOutStream } from '../../../renderer/charts/stream-layout.ts';
import type { StreamPicture } from '../../../shared/contract/batches.ts';

const aStream = (changes: Partial<StreamPicture> = {}): StreamPicture => ({
  from: '2026-05-01',
  to: '2026-06-10',
  today: '2026-05-14',
  bands: [
    { stage: 'egg', from: '2026-05-01', to: '2026-05-05', alive: 40, forecast: false },
    { stage: 'larva', from: '2026-05-05', to: '2026-05-10', alive: 30, forecast: false },
    { stage: 'sealed', from: '2026-05-10', to: '2026-05-15', alive: 20, forecast: true },
  ],
  emergence: { earliest: '2026-05-16', expected: '2026-05-17', latest: '2026-05-18' },
  gates: [{ from: '2026-05-11', to: '2026-05-13', step: 'hands-off-cells' }],
  flags: [{ step: 'count-taken', on: '2026-05-06', done: true }],
  losses: [{ on: '2026-05-05', cells: 10, setAside: 0, stage: 'larva' }],
  threads: [
    { box: 'K01', from: '2026-05-15', result: 'laying' },
    { box: 'K02', from: '2026-05-15', result: null },
  ],
  ...changes,
});
const SIZE = { width: 816, height: 228 };

describe('the batch picture', () => {
  const layout = layOutStream(aStream(), SIZE);

  test('puts forty days on the width, and today where it is', () => {
    expect(layout.dayWidth).toBe(20);
    expect(layout.todayX).toBe(8 + 13 * 20);
    expect(layOutStream(aStream({ today: '2026-08-01' }), SIZE).todayX).toBeNull();
  });

  test('draws the band as thick as the number alive, around one middle', () => {
    const [egg, larva, sealed] = layout.bands;
    expect(
      [egg, larva, sealed].map((band) => Math.round((100 * (band?.thickness ?? 0)) / layout.fullThickness)),
    ).toEqual([100, 75, 50]);
    for (const band of layout.bands) expect(band.y + band.thickness / 2).toBeCloseTo(layout.middle, 9);
  });

  test('joins bands without gap or overlap, and keeps them on the paper', () => {
    layout.bands.slice(1).forEach((band, index) => {
      const before = layout.bands[index];
      expect(band.x).toBeCloseTo((before?.x ?? 0) + (before?.width ?? 0), 9);
    });
    for (const band of layout.bands) expect(band.x + band.width).toBeLessThanOrEqual(SIZE.width);
  });

  test('covers whole days with a hands-off gate, both ends included', () => {
    expect(layout.gates).toMatchObject([{ x: 8 + 10 * 20, width: 60, step: 'hands-off-cells' }]);
  });

  test('keeps the words over a span away from the word over today, and those of two losses apart', () => {
    const [gate] = layout.gates;
    expect(gate?.label).toEqual({ x: 228, anchor: 'end' });
    const inside = layOutStream(aStream({ today: '2026-05-12' }), SIZE).gates[0];
    expect(inside?.label).toEqual({ x: 8 + 11 * 20 + 40, anchor: 'start' });
    const far = layOutStream(aStream({ today: '2026-06-01' }), SIZE).gates[0];
    expect(far?.label).toEqual({ x: 8 + 10 * 20 + 30, anchor: 'middle' });
    const losses = [
      { on: '2026-05-05', cells: 10, setAside: 0, stage: 'larva' },
      { on: '2026-05-07', cells: 1, setAside: 3, stage: 'sealed' },
    ] as const;
    expect(layOutStream(aStream({ losses }), SIZE).losses.map(({ anchor }) => anchor)).toEqual(['end', 'start']);
  });

  test('never lets a band vanish, and draws an unknown number at full thickness', () => {
    const thin = layOutStream(
      aStream({
        bands: [
          { stage: 'egg', from: '2026-05-01', to: '2026-05-05', alive: 400, forecast: false },
          { stage: 'larva', from: '2026-05-05', to: '2026-05-10', alive: 0, forecast: false },
        ],
      }),
      SIZE,
    );
    expect(thin.bands[1]?.thickness).toBe(3);
    const unknown = layOutStream(
      aStream({ bands: [{ stage: 'egg', from: '2026-05-01', to: '2026-05-05', alive: null, forecast: true }] }),
      SIZE,
    );
    expect(unknown.bands[0]?.thickness).toBe(unknown.fullThickness);
  });

  test('frays into one thread a box, inside the band', () => {
    expect(layout.threads.map((thread) => thread.box)).toEqual(['K01', 'K02']);
    for (const thread of layout.threads)
      expect(Math.abs(thread.y - layout.middle)).toBeLessThanOrEqual(layout.fullThickness / 2);
  });

  test('looks as it did', async () => {
    await expect(`${JSON.stringify(layout, null, 1)}\n`).toMatchFileSnapshot('../../golden/stream-layout.json');
  });
});
