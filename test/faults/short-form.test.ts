import { expect, test } from 'vitest';
import type { FaultReport } from './fault-report.ts';
import { faults as fullDrive } from './full.fault.ts';
import { faults as harmedFiles } from './import.fault.ts';
import { faults as kill } from './kill.fault.ts';
import { faults as hostileCallers } from './loopback.fault.ts';
import { faults as phases } from './phases.fault.ts';
import { faults as keptSums } from './tallies.fault.ts';
import { faults as twoProcesses } from './two-processes.fault.ts';
import { faults as undoWalks } from './undo.fault.ts';

/** The long form is `npm run faults`. */
const HARNESSES: Readonly<Record<string, (options: { readonly short: boolean }) => Promise<readonly FaultReport[]>>> = {
  'a full drive': fullDrive,
  'a hostile caller at the browser shell': hostileCallers,
  'a harmed file that is taken in': harmedFiles,
  'kill -9 in mid-save': kill,
  'kill -9 while a workbook is begun, brought up to date, or closed': phases,
  'kept sums against a recount': keptSums,
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
