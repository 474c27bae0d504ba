import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import more from './calendar-more.json' with { type: 'json' };

const RUNNER = fileURLToPath(new URL('./run.mjs', import.meta.url));
const MORE = fileURLToPath(new URL('./calendar-more.json', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'vectors-'));
afterAll(() => rmSync(folder, { recursive: true }));

function run(content: unknown) {
  const file = join(folder, 'vectors.json');
  writeFileSync(file, typeof content === 'string' ? content : JSON.stringify(content));
  const { status, stdout } = spawnSync(process.execPath, [RUNNER, file], { encoding: 'utf8' });
  return { status, lines: stdout.trim().split('\n') };
}
const colour = (changes: object = {}) => ({
  name: 'colour',
  kind: 'year-colour',
  source: 'common practice, no source',
  input: { year: 2026 },
  expected: { colour: 'white' },
  ...changes,
});

describe('npm run vectors', () => {
  it('passes every vector of our own, each with a source', () => {
    const lines = execFileSync(process.execPath, [RUNNER, MORE], { encoding: 'utf8' }).trim().split('\n');
    expect(lines).toEqual([`${more.vectors.length} passed, 0 failed`]);
    expect(more.vectors.length).toBeGreaterThanOrEqual(60);
  });

  it('covers every method with a whole published timetable', () => {
    const whole = more.vectors.filter((vector) => vector.name.endsWith('_whole_timetable'));
    expect(new Set(whole.map((vector) => ('method' in vector.input ? vector.input.method : null))).size).toBe(10);
  });

  it('says in one line what failed and ends with exit code 1', () => {
    const { status, lines } = run({ vectors: [colour(), colour({ name: 'wrong', expected: { colour: 'red' } })] });
    expect(lines).toEqual(['wrong: colour is white, not red', '1 passed, 1 failed']);
    expect(status).toBe(1);
  });

  it('fails on an unknown kind, a vector without a source, and an input that does not fit', () => {
    for (const changes of [
      { kind: 'horoscope' },
      { source: '' },
      { input: { year: '2026' } },
      { input: { year: 2026, moon: 1 } },
      { expected: {} },
    ]) {
      const { status, lines } = run({ vectors: [colour(changes)] });
      expect([status, lines.length, lines.at(-1)]).toEqual([1, 2, '0 passed, 1 failed']);
    }
  });

  it('fails on a calendar vector that asks nothing, and on a step that is not there', () => {
    const calendar = (expected: object) => ({
      name: 'calendar',
      kind: 'calendar',
      source: 'calendar arithmetic',
      input: { method: 'larva-grafting', anchor: { step: 'give-larvae', on: '2026-05-10' } },
      expected,
    });
    expect(run({ vectors: [calendar({})] }).status).toBe(1);
    expect(run({ vectors: [calendar({ emergence: {} })] }).status).toBe(1);
    expect(run({ vectors: [calendar({ 'cage-queen': { expected: '2026-05-10' } })] }).lines[0]).toContain(
      'not in the timetable',
    );
    expect(run({ vectors: [calendar({ emergence: { expected: '2026-05-22' } })] }).status).toBe(0);
  });

  it('fails on files that are missing, empty or no JSON', () => {
    expect(spawnSync(process.execPath, [RUNNER, join(folder, 'none.json')]).status).toBe(1);
    expect(spawnSync(process.execPath, [RUNNER]).status).toBe(1);
    expect(run('{').status).toBe(1);
    expect(run({ vectors: [] }).status).toBe(1);
  });
});
