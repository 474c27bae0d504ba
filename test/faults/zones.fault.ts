import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { dayOfIso } from '../../shared/kernel/day.ts';
import type { FaultReport } from './fault-report.ts';

const CHILD = fileURLToPath(new URL('./zone-child.ts', import.meta.url));
/**
 * Far east and west of UTC, half and quarter hours, summer time that begins at midnight or of half an hour, and zones
 * that changed their mind (names and rules: IANA time zone database, as Node carries it).
 */
const ZONES = [
  ...[
    'Pacific/Kiritimati',
    'Australia/Lord_Howe',
    'America/Santiago',
    'Europe/London',
    'Asia/Beirut',
    'Asia/Kathmandu',
  ],
  ...[
    'Africa/Casablanca',
    'Pacific/Chatham',
    'America/St_Johns',
    'America/Havana',
    'Africa/Cairo',
    'Pacific/Pago_Pago',
  ],
];
const [FIRST, LAST] = [dayOfIso('2024-01-01'), dayOfIso('2032-12-31')];
/** The short form takes some of the zones, and every so many-th day, so that every weekday and month is met. */
const SHORT_STEP = 59;
const SHORT_ZONES = 3;
const AT_ONCE = 2;
const LONG_ZONES = 12;

interface ZoneFindings {
  readonly calendar: string;
  readonly texts: string;
  readonly read: string;
  readonly wrongClockDays: number;
  readonly wrongNaiveDays: number;
  readonly days: number;
}

/** The same days in twelve time zones: calendar, texts and typed days must come out the same, and today is today. */
export async function faults({ short }: { readonly short: boolean }): Promise<readonly FaultReport[]> {
  const step = short ? SHORT_STEP : 1;
  const reference = await inZone('UTC', step);
  const found: (ZoneFindings & { readonly zone: string })[] = [];
  const zones = [...new Set(ZONES)].slice(0, short ? SHORT_ZONES : LONG_ZONES);
  const waiting = [...zones];
  const work = async () => {
    for (let zone = waiting.shift(); zone !== undefined; zone = waiting.shift())
      found.push({ zone, ...(await inZone(zone, step)) });
  };
  await Promise.all(Array.from({ length: AT_ONCE }, work));
  const off = found.filter(
    (one) => one.calendar !== reference.calendar || one.texts !== reference.texts || one.read !== reference.read,
  );
  const wrong = found.reduce((sum, one) => sum + one.wrongClockDays, 0);
  const naive = found.reduce((sum, one) => sum + one.wrongNaiveDays, 0);
  return [
    {
      harness: 'time zones',
      outcome:
        found.length === (short ? SHORT_ZONES : LONG_ZONES) && off.length === 0 && wrong === 0 ? 'passed' : 'failed',
      figures: [
        `zones ${found.length}`,
        `zones days in each ${reference.days}`,
        `zones that differ from UTC ${off.length}${off.map(({ zone }) => ` ${zone}`).join('')}`,
        `zones instants with a wrong today ${wrong}`,
      ],
    },
    {
      harness: 'time zones control: the UTC date of a local time must be wrong somewhere',
      outcome: naive > 0 ? 'passed' : 'failed',
      figures: [`zones control wrong ${naive}`],
    },
  ];
}

function inZone(zone: string, step: number): Promise<ZoneFindings> {
  return new Promise((resolve, reject) => {
    const args = [CHILD, String(FIRST), String(LAST), String(step)];
    const child = spawn(process.execPath, args, {
      env: { ...process.env, TZ: zone },
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    let said = '';
    child.stdout.on('data', (chunk: Buffer) => {
      said += chunk.toString();
    });
    child.on('error', reject);
    child.on('close', (status) => {
      if (status === 0) resolve(JSON.parse(said) as ZoneFindings);
      else reject(new Error(`The process in ${zone} ended with ${status}.`));
    });
  });
}
