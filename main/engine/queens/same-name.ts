/** A name as it is compared: names that differ only in capitals or blanks are one. */
export const comparedName = (name: string): string => name.trim().replaceAll(/\s+/g, ' ').toLocaleLowerCase('en');
