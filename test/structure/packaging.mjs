// Checks electron-builder.yml against the packer's own schema, and that what we promise in it is there.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { load } from 'js-yaml';

const require = createRequire(import.meta.url);
const { validateConfiguration } = require('app-builder-lib/out/util/config/config.js');
const { DebugLogger } = require('builder-util');

const file = process.argv[2] ?? join(import.meta.dirname, '../../electron-builder.yml');
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
const broken = promises.filter(([, kept]) => !kept);
for (const [promise] of broken) console.error(`electron-builder.yml: missing ${promise}`);
if (broken.length > 0) process.exit(1);
console.log('electron-builder.yml is valid and keeps its promises');
