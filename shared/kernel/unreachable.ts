/** Ends a switch over a union: a new member of the union breaks the build here instead of falling through. */
export function unreachable(value: never): never {
  throw new Error(`A case was forgotten: ${JSON.stringify(value)}`);
}
