import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const SCRIPT = fileURLToPath(new URL('./timetables-in-zone.ts', import.meta.url));

/** Half-hour and quarter-hour zones, both hemispheres, both sides of the date line, and zones with odd clock changes. */
const ZONES = [
  'UTC',
  'Europe/Berlin',
  'America/New_York',
  'America/St_Johns',
  'Asia/Kolkata',
  'Asia/Kathmandu',
  'Australia/Sydney',
  'Australia/Lord_Howe',
  'Pacific/Auckland',
  'Pacific/Kiritimati',
  'America/Santiago',
];

test('no date depends on the time zone or on summer time', () => {
  const runs = ZONES.map((TZ): { offset: number; lines: number; digest: string } =>
    JSON.parse(execFileSync(process.execPath, [SCRIPT], { env: { ...process.env, TZ }, encoding: 'utf8' })),
  );
  // The zones must really have been in force, or the comparison says nothing.
  expect(new Set(runs.map((run) => run.offset)).size).toBeGreaterThanOrEqual(8);
  expect(runs[0]?.lines).toBeGreaterThan(50_000);
  expect(new Set(runs.map((run) => run.digest)).size).toBe(1);
}, 120_000);
