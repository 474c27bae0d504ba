import { useWords } from './words.ts';

interface SheetDraftsProps<Sheet> {
  readonly sheets: readonly Sheet[];
  readonly text: (sheet: Sheet) => string;
  readonly onShow: (sheet: Sheet) => void;
  /** Where it cannot be typed on. */
  readonly onForget?: (sheet: Sheet) => void;
}

/** Rows that were left half typed on another day of the same sheet: said, and never shown under a wrong day. */
export function SheetDrafts<Sheet>({ sheets, text, onShow, onForget }: SheetDraftsProps<Sheet>) {
  const { frame } = useWords();
  return sheets.map((sheet) => (
    <p key={text(sheet)} className="line-notice no-print">
      {frame.sheetDraft(text(sheet))}{' '}
      <button type="button" className="as-text" onClick={() => onShow(sheet)}>
        {frame.showDraft}
      </button>
      {onForget ? (
        <>
          {' '}
          <button type="button" className="as-text" onClick={() => onForget(sheet)}>
            {frame.forgetDraft}
          </button>
        </>
      ) : null}
    </p>
  ));
}
