import { ask } from '../../client/client.ts';
import { usePaper } from '../../client/use-paper.ts';
import { PaperForm } from '../../components/PaperForm.tsx';
import { useWords } from '../../components/words.ts';

/** The words of the trade on paper. */
export function GlossaryPaper() {
  const { classPapers, print } = useWords();
  const { section, save } = classPapers.glossary;
  const paper = usePaper(ask.print.printGlossary.mutate, print);
  return <PaperForm title={section} save={save} paper={paper} input={(wish) => wish} />;
}
