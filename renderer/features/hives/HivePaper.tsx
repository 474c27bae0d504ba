import { ask } from '../../client/client.ts';
import { useNotedPaper } from '../../client/use-noted-paper.ts';
import { PaperForm } from '../../components/PaperForm.tsx';
import { PrintedBefore } from '../../components/PrintedPapers.tsx';
import { useWords } from '../../components/words.ts';

/** The page of one hive on paper. */
export function HivePaper({ colonyId }: { colonyId: string }) {
  const { hivePapers, print } = useWords();
  const words = hivePapers.hive;
  const of = { paper: 'hive-page', colonyId } as const;
  const paper = useNotedPaper(ask.hives.printHivePage.mutate, print, of);
  return (
    <>
      <PaperForm title={words.section} save={words.save} paper={paper} input={(wish) => ({ colonyId, ...wish })} />
      <PrintedBefore of={of} />
    </>
  );
}
