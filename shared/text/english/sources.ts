/** Where a figure comes from, as shared/biology names it: titles of publications stay as they are, the rest is told. */
export const sources = {
  told: (list: string): string => list,
} as const;
