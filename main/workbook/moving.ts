import { mkdirSync, statSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { Refusal } from '../../shared/contract/refusal.ts';
import type { Packed } from '../../shared/contract/workbook.ts';
import { ok, type Result, refuse } from '../../shared/kernel/result.ts';
import { noteFileOf, sha256Of } from './copy-note.ts';
import { fileNameOf } from './file-name.ts';
import {
  freePackageName,
  inPassingFolder,
  nameInPackage,
  PACKED,
  type PackedSum,
  writePackage,
} from './moving-package.ts';
import { BrokenPackage, putUnpacked, unpack } from './open-package.ts';
import { openingTrouble } from './opening-trouble.ts';
import type { Copies, Workbook } from './workbook.ts';

/** The newest copies go along until there are so many, or so many bytes of them. */
const COPIES = { most: 20, bytes: 500_000_000 } as const;

/** One zip with a checked copy of the workbook and its newest safety copies, for another computer. */
export function packForMoving(
  workbook: Workbook,
  copies: Copies,
  { folder, programData, now }: { readonly folder: string; readonly programData: string; readonly now: string },
): Result<Packed, Refusal> {
  if (!(statSync(folder, { throwIfNoEntry: false })?.isDirectory() ?? false))
    return refuse({ kind: 'folder-not-found', field: 'folder', folder });
  try {
    mkdirSync(programData, { recursive: true });
    return inPassingFolder(programData, (passing) => {
      const copy = join(passing, basename(workbook.file));
      const saved = workbook.saveAs(copy);
      if (!saved.ok) return saved;
      const along = copiesAlong(copies);
      const target = freePackageName(folder, `${nameInPackage(fileNameOf(workbook.name))} to move ${now.slice(0, 10)}`);
      const sum = `${copy}.json`;
      writeFileSync(sum, JSON.stringify({ sha256: sha256Of(copy).sha256 } satisfies PackedSum));
      const name = `${PACKED.workbook}${fileNameOf(workbook.name)}`;
      writePackage(target, [
        { name, file: copy },
        { name: `${name}.json`, file: sum },
        ...along
          .flatMap((file) => [file, noteFileOf(file)])
          .map((file) => ({ name: PACKED.copies + basename(file), file })),
      ]);
      return ok({ file: target, bytes: statSync(target).size, copies: along.length });
    });
  } catch (error) {
    return refuse(openingTrouble(error, join(folder, PACKED.workbook)));
  }
}

function copiesAlong(copies: Copies): readonly string[] {
  let bytes = 0;
  return copies
    .list()
    .copies.filter(({ place, checked }) => place === 'here' && checked)
    .slice(0, COPIES.most)
    .filter((copy) => {
      bytes += copy.bytes;
      return bytes <= COPIES.bytes;
    })
    .map(({ file }) => file);
}

/** Unpacks a package; answers where the workbook now lies. A broken one leaves nothing behind. */
export function unpackMoved(
  file: string,
  places: { readonly documents: string; readonly safetyFolder: string; readonly programData: string },
): Result<string, Refusal> {
  try {
    mkdirSync(places.programData, { recursive: true });
    return inPassingFolder(places.programData, (passing) =>
      ok(putUnpacked(unpack(file, passing), places.documents, places.safetyFolder)),
    );
  } catch (error) {
    if (error instanceof BrokenPackage) return refuse({ kind: 'package-broken', field: 'file', file });
    return refuse(openingTrouble(error, file));
  }
}
