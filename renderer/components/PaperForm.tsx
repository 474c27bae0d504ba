import { useState } from 'react';
import { type MadePaper, PaperActs } from './PaperActs.tsx';
import { FIRST_PAPER, PaperChoice, type PaperWish } from './PaperChoice.tsx';

interface PaperFormProps<Input> {
  readonly title: string;
  readonly explain?: string;
  readonly save: string;
  readonly paper: MadePaper<Input>;
  /** What is to be made on the paper chosen. */
  readonly input: (wish: PaperWish) => Input;
  /** Further choices, before that of the paper. */
  readonly children?: React.ReactNode;
}

/** A paper with its few choices, folded away until it is wanted. */
export function PaperForm<Input>({ title, explain, children, save, paper, input }: PaperFormProps<Input>) {
  const [wish, setWish] = useState(FIRST_PAPER);
  return (
    <details className="section">
      <summary>{title}</summary>
      {explain ? <p className="soft">{explain}</p> : null}
      <div className="row acts">
        {children}
        <PaperChoice wish={wish} onChange={setWish} />
      </div>
      <PaperActs save={save} paper={paper} input={input(wish)} />
    </details>
  );
}
