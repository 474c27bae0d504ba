import { expect, test } from 'vitest';
import { faults as damage } from './damage.fault.ts';
import { faults as driveError } from './drive-error.fault.ts';
import type { FaultReport } from './fault-report.ts';
import { faults as foreign } from './foreign.fault.ts';
import { faults as fullDrive } from './full.fault.ts';
import { faults as harmedFiles } from './import.fault.ts';
import { faults as kill } from './kill.fault.ts';
import { faults as lock } from './lock.fault.ts';
import { faults as looking } from './looking.fault.ts';
import { faults as hostileCallers } from './loopback.fault.ts';
import { faults as phases } from './phases.fault.ts';
import { faults as power } from './power.fault.ts';
import { faults as keptSums } from './tallies.fault.ts';
import { faults as twoProcesses } from './two-processes.fault.ts';
import { faults as undoWalks } from './undo.fault.ts';
import { faults as zones } from './zones.fault.ts';

/** The long form is `npm run faults`. */
const HARNESSES: Readonly<Record<string, (options: { readonly short: boolean }) => Promise<readonly FaultReport[]>>> = {
  'a damaged file': damage,
  'a drive error': driveError,
  'a file of another program, or of a newer one': foreign,
  'a full drive': fullDrive,
  'a hostile caller at the browser shell': hostileCallers,
  'a harmed file that is taken in': harmedFiles,
  'kill -9 in mid-save': kill,
  'kept sums against a recount': keptSums,
  'kill -9 while a workbook is begun, brought up to date, closed, copied, filled or gone back to': phases,
  'a power cut': power,
  'an operation and its lock': lock,
  'another time zone': zones,
  'looking at what another program writes': looking,
  'two processes at one workbook': twoProcesses,
  'taking everything back, and doing it again': undoWalks,
};

for (const [what, faults] of Object.entries(HARNESSES)) {
  test(`${what} loses nothing (short form)`, { timeout: 240_000 }, async (context) => {
    const reports = await faults({ short: true });
    expect(reports.length).toBeGreaterThan(0);
    expect(reports.filter(({ outcome }) => outcome === 'failed')).toEqual([]);
    const skipped = reports.find(({ outcome }) => outcome === 'skipped');
    if (skipped !== undefined) context.skip(skipped.figures.join('; '));
  });
}
