import { useResultKeys, useWords } from '../../components/words.ts';
import { type CodeTyping, JUMP_KEY, typedCode } from './code-typing.ts';

interface LegendProps {
  /** The question before the rest is filled, while it is open. */
  readonly asking: string | null;
  readonly typing: CodeTyping | null;
  /** A code that was typed and is not in the list. */
  readonly noSuchCode: string | null;
}

/** The keys, always in sight; what the grid asks or waits for stands above them. */
export function Legend({ asking, typing, noSuchCode }: LegendProps) {
  const { boxes, looks } = useWords();
  const keys = useResultKeys();
  const { sheet } = boxes;
  const jump = typing?.byHand ? sheet.jumping(typedCode(typing)) : null;
  return (
    <section className="legend" aria-label={sheet.legend}>
      {asking || jump || noSuchCode !== null ? (
        <p className="line-notice whole-line" role="alert">
          {asking ?? jump ?? sheet.noSuchCode(noSuchCode ?? '')}
        </p>
      ) : null}
      {keys.map(({ result, key, digit }) => (
        <span key={result} className="nowrap">
          <kbd>{key}</kbd> <kbd>{digit}</kbd> {looks[result].name}
        </span>
      ))}
      {[sheet.shift, sheet.note, sheet.more, sheet.correct, sheet.fill, sheet.jump(JUMP_KEY), sheet.finish].map(
        (hint) => (
          <span key={hint} className="soft nowrap">
            {hint}
          </span>
        ),
      )}
    </section>
  );
}
