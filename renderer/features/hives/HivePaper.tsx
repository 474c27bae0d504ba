import { ask } from '../../client/client.ts';
import { usePaper } from '../../client/use-paper.ts';
import { PaperForm } from '../../components/PaperForm.tsx';
import { useWords } from '../../components/words.ts';

/** The page of one hive on paper. */
export function HivePaper({ colonyId }: { colonyId: string }) {
  const { hivePapers, print } = useWords();
  const words = hivePapers.hive;
  const paper = usePaper(ask.hives.printHivePage.mutate, print);
  return <PaperForm title={words.section} save={words.save} paper={paper} input={(wish) => ({ colonyId, ...wish })} />;
}
