import type { LabelFace } from '../../shared/contract/print.ts';
import {
  type Block,
  boxBlock,
  type LabelPart,
  type LabelSizes,
  looksBlock,
  motherBlock,
  stripBlock,
} from './label-blocks.ts';
import type { Measure } from './text-fit.ts';

type Omitted = ReadonlySet<LabelPart>;

/** The rows of a label at given sizes in a given width; null when a row does not fit. */
export interface LabelRows {
  box(label: LabelFace, sizes: LabelSizes, omit: Omitted, width: number): Block | null;
  mother(label: LabelFace, sizes: LabelSizes, width: number): Block | null;
  strip(label: LabelFace, sizes: LabelSizes, width: number): Block | null;
  looks(label: LabelFace, sizes: LabelSizes, omit: Omitted, width: number): Block | null;
}

/** Makes rows and keeps them: the labels of a batch differ in little but the box number, and a label is tried in many sizes. */
export function labelRows(measure: Measure): LabelRows {
  const [boxes, mothers, strips, looks] = [keeper(), keeper(), keeper(), keeper()];
  const wordsOf = wordsKeeper();
  return {
    box: (label, sizes, omit, width) =>
      boxes(sizes, width, omit.has('colour') ? wordsOf(label).plainBox : wordsOf(label).box, () =>
        boxBlock(label, sizes, omit, width, measure),
      ),
    mother: (label, sizes, width) =>
      mothers(sizes, width, label.mother, () => motherBlock(label, sizes, width, measure)),
    strip: (label, sizes, width) =>
      strips(sizes, width, label.handsOffUntil ?? '', () => stripBlock(label, sizes, width, measure)),
    looks: (label, sizes, omit, width) =>
      looks(sizes, width, omit.has('brood') ? wordsOf(label).firstLook : wordsOf(label).looks, () =>
        looksBlock(label, sizes, omit, width, measure),
      ),
  };
}

/** The words that a row depends on, put together once for a label, since it is tried in many sizes. */
function wordsKeeper() {
  const kept = new WeakMap<LabelFace, ReturnType<typeof joined>>();
  return (label: LabelFace) => {
    const before = kept.get(label);
    if (before) return before;
    const words = joined(label);
    kept.set(label, words);
    return words;
  };
}

const joined = ({ box, batch, yearColour, firstLookOn, sealedBroodLookOn }: LabelFace) => ({
  box: `${box}\n${batch}\n${yearColour}`,
  plainBox: `${box}\n${batch}\n`,
  looks: `${firstLookOn}\n${sealedBroodLookOn}`,
  firstLook: `${firstLookOn}\n`,
});

type Keeper = (sizes: LabelSizes, width: number, words: string, make: () => Block | null) => Block | null;

function keeper(): Keeper {
  const kept = new Map<LabelSizes, Map<number, Map<string, Block | null>>>();
  return (sizes, width, words, make) => {
    const byWidth = kept.get(sizes) ?? new Map<number, Map<string, Block | null>>();
    kept.set(sizes, byWidth);
    const byWords = byWidth.get(width) ?? new Map<string, Block | null>();
    byWidth.set(width, byWords);
    const before = byWords.get(words);
    if (before !== undefined) return before;
    const made = make();
    byWords.set(words, made);
    return made;
  };
}
