import { mkdirSync, readFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';

export interface Places {
  readonly documents: string;
  readonly programData: string;
}

/** Where the browser shell keeps things: the usual folders of each system, or one folder given for a trial. */
export function placesOf(given: string | undefined): Places {
  const places = given
    ? { documents: join(given, 'documents'), programData: join(given, 'program') }
    : { documents: join(usualDocuments(), 'Ripecell'), programData: usualProgramData() };
  for (const folder of Object.values(places)) mkdirSync(folder, { recursive: true, mode: 0o700 });
  return places;
}

function usualProgramData(): string {
  if (process.platform === 'win32')
    return join(process.env.APPDATA ?? join(homedir(), 'AppData', 'Roaming'), 'Ripecell');
  if (process.platform === 'darwin') return join(homedir(), 'Library', 'Application Support', 'Ripecell');
  return join(process.env.XDG_CONFIG_HOME ?? join(homedir(), '.config'), 'Ripecell');
}

/** Linux keeps the folder's own name ("Dokumente", another drive) in a small file of the freedesktop xdg-user-dirs. */
function usualDocuments(): string {
  const usual = join(homedir(), 'Documents');
  if (process.platform !== 'linux') return usual;
  try {
    const settings = join(process.env.XDG_CONFIG_HOME ?? join(homedir(), '.config'), 'user-dirs.dirs');
    const named = /^XDG_DOCUMENTS_DIR="(.+)"$/m.exec(readFileSync(settings, 'utf8'))?.[1];
    return named?.replace(/^\$HOME(?=\/|$)/, homedir()) ?? usual;
  } catch {
    return usual;
  }
}
