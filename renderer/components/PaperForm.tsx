import { useState } from 'react';
import type { PaperActsProps } from './PaperActs.tsx';
import { PaperActs } from './PaperActs.tsx';
import { FIRST_PAPER, PaperChoice, type PaperWish } from './PaperChoice.tsx';

interface PaperFormProps extends Omit<PaperActsProps, 'onSave' | 'onOpen' | 'busy'> {
  readonly title: string;
  readonly explain?: string;
  readonly busy: boolean;
  readonly onSave: (wish: PaperWish) => void;
  readonly onOpen: ((wish: PaperWish) => void) | null;
  /** Further choices, before that of the paper. */
  readonly children?: React.ReactNode;
}

/** A paper with its few choices, folded away until it is wanted. */
export function PaperForm({ title, explain, children, onSave, onOpen, ...acts }: PaperFormProps) {
  const [wish, setWish] = useState(FIRST_PAPER);
  return (
    <details className="section">
      <summary>{title}</summary>
      {explain ? <p className="soft">{explain}</p> : null}
      <div className="row acts">
        {children}
        <PaperChoice wish={wish} onChange={setWish} />
      </div>
      <PaperActs {...acts} onSave={() => onSave(wish)} onOpen={onOpen && (() => onOpen(wish))} />
    </details>
  );
}
