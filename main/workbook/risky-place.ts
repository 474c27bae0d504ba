import { existsSync, statfsSync } from 'node:fs';
import { dirname, join, parse } from 'node:path';
import type { RiskyPlace } from '../../shared/contract/workbook.ts';

/** Folders that programs for synchronising name after themselves, alone or with a name in brackets or after a dash. */
const SYNCED_NAMES =
  /^(dropbox|onedrive|google ?drive|googledrive|my drive|icloud ?drive|icloud~.*|com~apple~clouddocs|mobile documents|nextcloud|owncloud|pcloud ?drive|megasync|mega|seafile|syncthing|resilio ?sync|box ?sync|box|tresorit|proton ?drive)( - .*| \(.*\))?$/i;
/** What such programs leave inside the folder they look after. */
const SYNCED_MARKS = [
  '.dropbox',
  '.dropbox.cache',
  '.stfolder',
  '.stignore',
  '.owncloudsync.log',
  '.nextcloudsync.log',
  '.sync',
];
/** How many folders upwards marks are looked for. */
const LEVELS = 12;

/** Numbers by which Linux tells file systems that lie on another computer: statfs(2), Linux manual pages. */
const NETWORK_TYPES: ReadonlyMap<number, string> = new Map([
  [0x6969, 'NFS'],
  [0x517b, 'SMB'],
  [0xff534d42, 'CIFS'],
  [0xfe534d42, 'SMB'],
  [0x01021997, '9P'],
  [0x5346414f, 'AFS'],
  [0x73757245, 'Coda'],
  [0x00c36400, 'Ceph'],
]);

export interface PlaceSigns {
  /** Number of the file system a folder lies on, or null where the system does not tell. */
  readonly fileSystemType: (folder: string) => number | null;
  readonly exists: (file: string) => boolean;
}

const REAL_SIGNS: PlaceSigns = {
  exists: existsSync,
  fileSystemType(folder) {
    if (process.platform !== 'linux') return null;
    try {
      return statfsSync(folder).type;
    } catch {
      return null;
    }
  },
};

/** Does a file lie where another program or another computer may change it? Looks at names only and opens nothing. */
export function riskyPlaceOf(file: string, signs: PlaceSigns = REAL_SIGNS): RiskyPlace | null {
  const folder = dirname(file);
  if (/^(\\\\|\/\/)[^\\/?.]/.test(file)) return { kind: 'network', sign: folder };
  const type = signs.fileSystemType(folder);
  // Some come as signed numbers of 32 bits.
  const network = type === null ? undefined : NETWORK_TYPES.get(type < 0 ? type + 2 ** 32 : type);
  if (network !== undefined) return { kind: 'network', sign: network };
  const named = file.split(/[\\/]/).find((name) => SYNCED_NAMES.test(name));
  if (named !== undefined) return { kind: 'synced', sign: named };
  const marked = foldersUpwards(folder).find((one) => SYNCED_MARKS.some((mark) => signs.exists(join(one, mark))));
  return marked === undefined ? null : { kind: 'synced', sign: marked };
}

function foldersUpwards(folder: string): readonly string[] {
  const { root } = parse(folder);
  const folders: string[] = [];
  for (let one = folder; one !== root && folders.length < LEVELS; one = dirname(one)) folders.push(one);
  return folders;
}
