import { readFileSync, renameSync, writeFileSync } from 'node:fs';
import { z } from 'zod';

const WindowPlace = z.object({
  x: z.int(),
  y: z.int(),
  width: z.int().min(640).max(20_000),
  height: z.int().min(480).max(20_000),
  maximised: z.boolean(),
});
export type WindowPlace = z.infer<typeof WindowPlace>;

export interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Where the window stood last time; null when nothing usable is known. */
export function readWindowPlace(file: string): WindowPlace | null {
  try {
    const read = WindowPlace.safeParse(JSON.parse(readFileSync(file, 'utf8')));
    return read.success ? read.data : null;
  } catch {
    return null;
  }
}

export function writeWindowPlace(file: string, place: WindowPlace): void {
  try {
    writeFileSync(`${file}.part`, JSON.stringify(place));
    renameSync(`${file}.part`, file);
  } catch {
    // A place that cannot be remembered is no reason to disturb the person who is closing the window.
  }
}

/** A remembered place counts only if its title bar is still on a screen: a second monitor may be gone. */
export function isOnAScreen(place: WindowPlace, screens: readonly Area[]): boolean {
  const middle = place.x + place.width / 2;
  return screens.some(
    (screen) =>
      middle >= screen.x &&
      middle <= screen.x + screen.width &&
      place.y >= screen.y &&
      place.y <= screen.y + screen.height - 40,
  );
}
