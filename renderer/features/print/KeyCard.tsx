import { ask } from '../../client/client.ts';
import { usePaper } from '../../client/use-paper.ts';
import { PaperForm } from '../../components/PaperForm.tsx';
import { useWords } from '../../components/words.ts';

/** The keys on paper. */
export function KeyCard() {
  const { keyCard: words, print } = useWords();
  const paper = usePaper(ask.print.printKeyCard.mutate, print);
  return (
    <PaperForm title={words.section} explain={words.explain} save={words.save} paper={paper} input={(wish) => wish} />
  );
}
