import { ask } from '../../client/client.ts';
import { usePaper } from '../../client/use-paper.ts';
import { PaperForm } from '../../components/PaperForm.tsx';
import { useWords } from '../../components/words.ts';

/** The card that goes with her. */
export function HandOverCard({ queenId }: { queenId: string }) {
  const { handOver: words, print } = useWords();
  const paper = usePaper(ask.queens.printQueenCard.mutate, print);
  return <PaperForm title={words.section} save={words.save} paper={paper} input={(wish) => ({ queenId, ...wish })} />;
}
