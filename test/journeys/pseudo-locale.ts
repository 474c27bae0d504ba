/**
 * The script of a language, with a pseudo-locale in the place of its words: each sentence between ⟦ and ⟧ and 40 %
 * longer, in groups that may break as words do. The words of functions are changed as they are said, so that nothing of them is missed.
 */
export function pseudoScript(script: string): string {
  const exported = /\b(\w+) as (german|firstWords)\b(?=[^{}]*\};?\s*$)/;
  if (!exported.test(script)) throw new Error('the script of the language does not end with its export');
  let words = '';
  const changed = script.replace(exported, (_, name: string, as: string) => {
    words = name;
    return `pseudo as ${as}`;
  });
  return `${changed};const pseudo=(${pseudo.toString()})(${words});`;
}

function pseudo(words: unknown, isWhole = true): unknown {
  const longer = (text: string): string =>
    // The first words come along with all words and are longer already.
    text === '' || text.startsWith('⟦')
      ? text
      : `⟦${text}${' ······'.repeat(Math.ceil(text.length * 0.4)).slice(0, Math.ceil(text.length * 0.4))}⟧`;
  if (typeof words === 'string') return longer(words);
  if (typeof words === 'function')
    return (...given: unknown[]) => {
      const said: unknown = words(...given);
      return typeof said === 'string' ? longer(said) : said;
    };
  if (Array.isArray(words)) return words.map((one) => pseudo(one, false));
  if (typeof words !== 'object' || words === null) return words;
  return Object.fromEntries(
    Object.entries(words).map(([key, value]) => [key, isWhole && key === 'language' ? value : pseudo(value, false)]),
  );
}
