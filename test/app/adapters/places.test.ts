import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { homedir, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { placesOf } from '../../../app/adapters/places.ts';

vi.mock('node:os', async (actual) => ({ ...(await actual<typeof import('node:os')>()), homedir: vi.fn() }));

const home = mkdtempSync(join(tmpdir(), 'ripecell-home-'));
beforeAll(() => {
  vi.mocked(homedir).mockReturnValue(home);
  vi.stubEnv('XDG_CONFIG_HOME', '');
  delete process.env.XDG_CONFIG_HOME;
});
afterAll(() => {
  vi.unstubAllEnvs();
  rmSync(home, { recursive: true, force: true });
});

test('a folder given for a trial holds everything', () => {
  const given = join(home, 'trial');
  const { documents, programData } = placesOf(given);
  expect([documents, programData]).toEqual([join(given, 'documents'), join(given, 'program')]);
  expect([existsSync(documents), existsSync(programData)]).toEqual([true, true]);
});

// The file and its form: freedesktop.org, xdg-user-dirs (lines XDG_xxx_DIR="$HOME/yyy" or an absolute path).
describe.runIf(process.platform === 'linux')('the usual places on Linux', () => {
  const userFolders = (text: string) => {
    mkdirSync(join(home, '.config'), { recursive: true });
    writeFileSync(join(home, '.config/user-dirs.dirs'), text);
    return placesOf(undefined);
  };

  test('are Documents and .config when the system names no others', () => {
    const places = placesOf(undefined);
    expect(places).toEqual({
      documents: join(home, 'Documents/Ripecell'),
      programData: join(home, '.config/Ripecell'),
    });
  });

  test('follow the name the documents folder has in the language of the system', () => {
    const { documents } = userFolders('# made by xdg-user-dirs\nXDG_DOCUMENTS_DIR="$HOME/Dokumente"\n');
    expect(documents).toBe(join(home, 'Dokumente/Ripecell'));
  });

  test('follow it to another drive', () => {
    const drive = join(home, 'drive');
    expect(userFolders(`XDG_DOCUMENTS_DIR="${drive}"\n`).documents).toBe(join(drive, 'Ripecell'));
  });

  test('are the plain ones when the file says nothing of documents', () => {
    expect(userFolders('XDG_MUSIC_DIR="$HOME/Musik"\n').documents).toBe(join(home, 'Documents/Ripecell'));
  });
});
