// Checks electron-builder.yml against the packer's own schema, and that what we promise in it is there; and in each
// packed program that lies in dist, or is named after --program, what was really burnt into it.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { load } from 'js-yaml';

const require = createRequire(import.meta.url);
const { validateConfiguration } = require('app-builder-lib/out/util/config/config.js');
const { DebugLogger } = require('builder-util');
const { FuseV1Options, getCurrentFuseWire } = require('@electron/fuses');

const { values, positionals } = parseArgs({
  options: { program: { type: 'string', multiple: true } },
  allowPositionals: true,
});
const file = positionals[0] ?? join(import.meta.dirname, '../../electron-builder.yml');
const config = load(readFileSync(file, 'utf8'));
await validateConfiguration(config, new DebugLogger(false));

// Switches burnt into the program; see Electron's page on fuses (electronjs.org/docs/latest/tutorial/fuses).
const FUSES = {
  runAsNode: false,
  enableCookieEncryption: true,
  enableNodeOptionsEnvironmentVariable: false,
  enableNodeCliInspectArguments: false,
  enableEmbeddedAsarIntegrityValidation: true,
  onlyLoadAppFromAsar: true,
  loadBrowserProcessSpecificV8Snapshot: false,
  grantFileProtocolExtraPrivileges: false,
};
const targets = (platform) => (config[platform]?.target ?? []).map((target) => target.target ?? target);
const promises = [
  [
    'a Windows installer for all users of the machine',
    targets('win').includes('nsis') && config.nsis?.perMachine === true,
  ],
  ['a macOS disk image', targets('mac').includes('dmg')],
  ['an AppImage and a Debian package', ['AppImage', 'deb'].every((target) => targets('linux').includes(target))],
  ['the workbook ending', [config.fileAssociations].flat().some((association) => association?.ext === 'ripecell')],
  ...Object.entries(FUSES).map(([fuse, want]) => [`the fuse ${fuse}: ${want}`, config.electronFuses?.[fuse] === want]),
];
const broken = promises.filter(([, kept]) => !kept).map(([promise]) => `electron-builder.yml: missing ${promise}`);

// Where the packer leaves the program of each system.
const DIST = join(import.meta.dirname, '../../dist');
const packed = (values.program ?? inDist()).map(async (program) => {
  const wire = await getCurrentFuseWire(program);
  for (const [fuse, want] of Object.entries(FUSES)) {
    const state = wire[FuseV1Options[`${fuse[0].toUpperCase()}${fuse.slice(1)}`]];
    if (state !== (want ? '1' : '0').charCodeAt(0))
      broken.push(`${program}: the fuse ${fuse} is not burnt in as ${want}`);
  }
});
await Promise.all(packed);

function inDist() {
  if (!existsSync(DIST)) return [];
  return readdirSync(DIST).flatMap((folder) =>
    ['ripecell', 'Ripecell.exe', 'Ripecell.app']
      .map((name) => join(DIST, folder, name))
      .filter((program) => /unpacked|^mac/.test(folder) && existsSync(program)),
  );
}

for (const promise of broken) console.error(promise);
if (broken.length > 0) process.exit(1);
console.log(
  `electron-builder.yml is valid and keeps its promises; ${packed.length === 0 ? 'no packed program is here to be read' : `${packed.length} packed programs read`}`,
);
