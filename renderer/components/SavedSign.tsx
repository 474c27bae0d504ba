import { useWords } from './words.ts';

/** How a typed row stands: on its way into the workbook, in it, or not. */
export type RowState = 'saving' | 'saved' | 'not-saved';

const SIGNS: Readonly<Record<RowState, string>> = { saving: '…', saved: '✓', 'not-saved': '✕' };
const CLASSES: Readonly<Record<RowState, string>> = { saving: 'soft', saved: 'good', 'not-saved': 'bad' };

export function SavedSign({ state }: { state: RowState | null }) {
  const { frame } = useWords();
  return (
    <span className={`saved-sign ${state ? CLASSES[state] : ''}`} data-saved={state ?? undefined}>
      {state ? (
        <>
          <span aria-hidden="true">{SIGNS[state]}</span>
          <span className="visually-hidden">{frame.rowStates[state]}</span>
        </>
      ) : null}
    </span>
  );
}
