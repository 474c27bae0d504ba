/** The shape of words without what they say: a sentence is any text, a function keeps what it is given. */
export type Widened<Text> = Text extends string
  ? string
  : Text extends (...given: infer Given) => infer Said
    ? (...given: Given) => Widened<Said>
    : Text extends readonly (infer One)[]
      ? readonly WidenedOne<One>[]
      : Text extends object
        ? { readonly [Key in keyof Text]: Widened<Text[Key]> }
        : Text;

/** Of a list, its length may differ; of a pair in it, not. */
type WidenedOne<One> = One extends readonly unknown[] ? { readonly [At in keyof One]: Widened<One[At]> } : Widened<One>;

/** Words of another language, as far as they are there; what is missing is said in English. A list is given whole. */
export type Translation<Text> = Text extends string
  ? string
  : Text extends (...given: infer Given) => infer Said
    ? (...given: Given) => Widened<Said>
    : Text extends readonly (infer One)[]
      ? readonly WidenedOne<One>[]
      : Text extends object
        ? { readonly [Key in keyof Text]?: Translation<Text[Key]> }
        : Text;

type Tree = Readonly<Record<string, unknown>>;

const isTree = (value: unknown): value is Tree => typeof value === 'object' && value !== null && !Array.isArray(value);

/** The words of a language laid over the English ones. Neither is changed. */
export function laidOver<Words>(english: Words, translated: Translation<Words>): Words {
  return merged(english, translated) as Words;
}

function merged(under: unknown, over: unknown): unknown {
  if (over === undefined) return under;
  if (!isTree(under) || !isTree(over)) return over;
  const keys = new Set([...Object.keys(under), ...Object.keys(over)]);
  return Object.fromEntries([...keys].map((key) => [key, merged(under[key], over[key])]));
}
