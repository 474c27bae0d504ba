let pending: Promise<unknown> = Promise.resolve();

/** Told of every save that waits in a line; rows typed quickly are sent one after the other. */
export function waitFor(save: Promise<void>): Promise<void> {
  pending = Promise.allSettled([pending, save]);
  return save;
}

/** Resolves when everything typed so far is saved or refused: an undo must not overtake it. */
export const savesSettled = (): Promise<unknown> => pending;
