import { Button } from '@mui/material';
import { useState } from 'react';
import { PROGRAM_VERSION } from '../../shared/kernel/program-version.ts';
import { shell } from '../client/client.ts';
import { saveMade } from '../client/made-files.ts';
import { Page } from '../components/Page.tsx';
import { useFirstWords } from '../components/words.ts';

const REPORT = 'ripecell-report.txt';

/** In place of a page that failed: show it again, or write down where and why for whoever can mend it. */
export function FailedPage({ error, onAgain }: { error: unknown; onAgain: () => void }) {
  const { frame } = useFirstWords();
  const [outcome, setOutcome] = useState<string | null>(null);
  const save = async () => {
    const bytes = new TextEncoder().encode(reportOf(error));
    const base64 = btoa(String.fromCharCode(...bytes));
    setOutcome(await saveMade({ name: REPORT, mediaType: 'text/plain', base64 }, frame.reportKept));
  };
  return (
    <Page title={frame.pageFailed}>
      <p role="alert">{frame.typingIsSaved}</p>
      <div className="acts" style={{ margin: '18px 0' }}>
        <Button variant="contained" onClick={onAgain}>
          {frame.reloadPage}
        </Button>
        <Button variant="outlined" onClick={() => void save()}>
          {frame.saveReport}
        </Button>
      </div>
      <p className="soft small">{frame.reportSays}</p>
      {outcome ? <p role="status">{outcome}</p> : null}
    </Page>
  );
}

/** Version, page and error: nothing out of the workbook but what the error itself says. */
function reportOf(error: unknown): string {
  const { name, message, stack } =
    error instanceof Error ? error : { name: 'Error', message: String(error), stack: '' };
  const page = window.location.hash.split('?')[0];
  return [
    `Ripecell ${PROGRAM_VERSION} (${shell.kind}), ${navigator.userAgent}`,
    `Page ${page}, ${new Date().toISOString()}`,
    `${name}: ${message}`,
    stack ?? '',
  ].join('\n');
}
