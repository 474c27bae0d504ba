import { ask } from '../../client/client.ts';
import { useNotedPaper } from '../../client/use-noted-paper.ts';
import { PaperForm } from '../../components/PaperForm.tsx';
import { PrintedBefore } from '../../components/PrintedPapers.tsx';
import { useWords } from '../../components/words.ts';

/** The card that goes with her. */
export function HandOverCard({ queenId }: { queenId: string }) {
  const { handOver: words, print } = useWords();
  const of = { paper: 'queen-card', queenId } as const;
  const paper = useNotedPaper(ask.queens.printQueenCard.mutate, print, of);
  return (
    <>
      <PaperForm title={words.section} save={words.save} paper={paper} input={(wish) => ({ queenId, ...wish })} />
      <PrintedBefore of={of} />
    </>
  );
}
