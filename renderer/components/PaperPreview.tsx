import { Button, Dialog } from '@mui/material';
import { useEffect, useId, useRef, useState } from 'react';
import { type PdfPages, readPdfPages } from './read-pdf-pages.ts';
import { useWords } from './words.ts';

export interface PreviewedPaper {
  readonly name: string;
  readonly base64: string;
}

interface PaperPreviewProps {
  readonly paper: PreviewedPaper;
  readonly onSave: () => void;
  /** Null where the paper can only be saved. */
  readonly onOpen: (() => void) | null;
  readonly onClose: () => void;
}

const KEYS: Readonly<Record<string, (page: number, pages: number) => number>> = {
  ArrowRight: (page) => page + 1,
  ArrowLeft: (page) => page - 1,
  Home: () => 1,
  End: (_, pages) => pages,
};

/** The made PDF, page by page, before it is saved or printed. */
export function PaperPreview({ paper, onSave, onOpen, onClose }: PaperPreviewProps) {
  const { preview: words, print } = useWords();
  const id = useId();
  const { canvas, page, pages, text, failed, turnTo } = usePages(paper);
  return (
    <Dialog
      open
      onClose={onClose}
      fullWidth
      maxWidth="md"
      aria-labelledby={id}
      onKeyDown={(event) => {
        const next = KEYS[event.key];
        if (!next || event.ctrlKey || event.altKey || event.metaKey) return;
        event.preventDefault();
        turnTo(next(page, pages));
      }}
    >
      <div className="paper-preview">
        <h2 id={id}>{words.title(paper.name)}</h2>
        <div className="acts">
          <Button variant="outlined" disabled={page <= 1} onClick={() => turnTo(page - 1)}>
            {words.previous}
          </Button>
          <span role="status">{pages === 0 ? words.opening : words.page(page, pages)}</span>
          <Button variant="outlined" disabled={page >= pages} onClick={() => turnTo(page + 1)}>
            {words.next}
          </Button>
        </div>
        {failed ? <p className="line-problem">{words.failed}</p> : null}

        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keyboard (WCAG 2.1.1). */}
        <div role="group" className="paper-picture" tabIndex={0} aria-label={words.title(paper.name)}>
          <canvas ref={canvas} role="img" aria-label={words.picture(page, pages, text)} />
        </div>
        <div className="acts">
          <Button variant="contained" autoFocus onClick={onSave}>
            {print.save}
          </Button>
          {onOpen ? (
            <Button variant="outlined" onClick={onOpen}>
              {print.open}
            </Button>
          ) : null}
          <Button variant="outlined" onClick={onClose}>
            {words.close}
          </Button>
        </div>
      </div>
    </Dialog>
  );
}

/** Dots for each point of the window's width; sharp on a fine screen and when zoomed in. */
const DOTS_WIDE = 1640;

function usePages({ base64 }: PreviewedPaper) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [read, setRead] = useState<PdfPages | null>(null);
  const [page, setPage] = useState(1);
  const [drawn, setDrawn] = useState({ page: 0, text: '' });
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    let left = false;
    const reading = readPdfPages(base64);
    reading.then(
      (pages) => !left && setRead(pages),
      () => setFailed(true),
    );
    return () => {
      left = true;
      void reading.then((pages) => pages.close());
    };
  }, [base64]);
  useEffect(() => {
    if (!read || !canvas.current) return;
    let left = false;
    read.draw(page, canvas.current, DOTS_WIDE).then(
      (text) => !left && setDrawn({ page, text }),
      () => !left && setFailed(true),
    );
    return () => {
      left = true;
    };
  }, [read, page]);
  const pages = read?.count ?? 0;
  return {
    canvas,
    page,
    pages,
    text: drawn.page === page ? drawn.text : '',
    failed,
    turnTo: (next: number) => setPage(Math.min(Math.max(next, 1), Math.max(pages, 1))),
  };
}
