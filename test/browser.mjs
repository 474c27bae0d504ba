// Finds a Chromium for the browser tests, or gets one: RIPECELL_CHROMIUM, Playwright's own, the system's, Playwright's
// download, Debian's package when run as root. Fails with one plain sentence.
import { execFileSync, spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from 'playwright';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'microsoft-edge'];

/** As root Chromium refuses its sandbox; the rest keeps it from calling out by itself. */
export const CHROMIUM_ARGS = [
  ...(process.platform === 'linux' && process.getuid?.() === 0 ? ['--no-sandbox'] : []),
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export function findChromium({ install = true, say = console.error } = {}) {
  const given = process.env.RIPECELL_CHROMIUM;
  if (given) {
    if (isProgram(given)) return given;
    throw new Error(`RIPECELL_CHROMIUM=${given} is not a program.`);
  }
  const own = chromium.executablePath();
  if (own && existsSync(own)) return own;
  const found = onSystem();
  if (found) return found;
  if (!install) return undefined;
  return fetchOwn(own, say) ?? installFromDebian(say) ?? noBrowser();
}

function fetchOwn(own, say) {
  say('No Chromium found. Trying the download that comes with Playwright…');
  const cli = join(import.meta.dirname, '../node_modules/playwright/cli.js');
  const got = spawnSync(process.execPath, [cli, 'install', 'chromium'], { stdio: 'ignore', timeout: 300_000 });
  return got.status === 0 && existsSync(own) ? own : undefined;
}

function installFromDebian(say) {
  if (process.platform !== 'linux' || process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return undefined;
  say("Trying Debian's package chromium…");
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const aptGet = (args, timeout) => execFileSync('apt-get', args, { stdio: 'ignore', env, timeout });
  try {
    aptGet(['update', '-q'], 180_000);
    aptGet(['install', '-y', '-q', '--no-install-recommends', 'chromium'], 480_000);
  } catch {
    return undefined;
  }
  return onSystem();
}

function noBrowser() {
  throw new Error(
    'No Chromium for the browser tests. Install Chrome, Edge or Chromium, or set RIPECELL_CHROMIUM to its program.',
  );
}

function onSystem() {
  const onPath = (process.env.PATH ?? '').split(delimiter).flatMap((folder) => NAMES.map((name) => join(folder, name)));
  return [...usualPlaces(), ...onPath].find(
    (path) => isProgram(path) && (process.platform !== 'linux' || answers(path)),
  );
}

function usualPlaces() {
  if (process.platform === 'darwin')
    return ['Google Chrome', 'Chromium', 'Microsoft Edge'].map(
      (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
    );
  if (process.platform !== 'win32') return [];
  return ['ProgramFiles', 'ProgramFiles(x86)', 'LocalAppData']
    .flatMap((name) => (process.env[name] ? [process.env[name]] : []))
    .flatMap((folder) => [
      join(folder, 'Google/Chrome/Application/chrome.exe'),
      join(folder, 'Microsoft/Edge/Application/msedge.exe'),
    ]);
}

function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function answers(path) {
  const { status, stdout } = spawnSync(path, ['--version'], { encoding: 'utf8', timeout: 20_000 });
  return status === 0 && /Chrom|Edge/.test(stdout);
}
