/** A text as it is compared: small letters, without accents and umlauts, so that "Fruhling" finds "Frühling". */
export const folded = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{Mark}/gu, '')
    .toLowerCase();

/** The words to look for; none for a text of blanks. */
export const wordsOf = (text: string): readonly string[] => folded(text).split(/\s+/).filter(Boolean);

/** Whether a text holds every one of the words, each anywhere in it. Without words nothing is found. */
export function holdsWords(text: string, words: readonly string[]): boolean {
  if (words.length === 0) return false;
  const plain = folded(text);
  return words.every((word) => plain.includes(word));
}
