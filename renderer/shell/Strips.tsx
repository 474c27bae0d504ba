import { Button } from '@mui/material';
import { lazy, Suspense } from 'react';
import type { WorkbookState } from '../../shared/contract/workbook.ts';
import { ask } from '../client/client.ts';
import { useOtherWorkbook } from '../client/hooks.ts';
import { useDays, useFirstWords } from '../components/words.ts';

const PracticeStrip = lazy(() => import('./PracticeStrip.tsx').then((m) => ({ default: m.PracticeStrip })));
const RareStrip = lazy(() => import('./RareStrip.tsx').then((m) => ({ default: m.RareStrip })));

type Open = NonNullable<WorkbookState['open']>;

/** What must be known on every page: the demo or practice workbook, a safety copy, why nothing can be saved, a risky place. */
export function Strips({ open }: { open: Open }) {
  if (open.kind === 'demo') return <DemoStrip today={open.today} />;
  const isPractice = open.kind === 'practice';
  if (!isPractice && !open.lookingAt && !open.readOnlyBecause && !open.harm && !open.riskyPlace) return null;
  return (
    <Suspense fallback={null}>{isPractice ? <PracticeStrip today={open.today} /> : <RareStrip open={open} />}</Suspense>
  );
}

function DemoStrip({ today }: { today: string }) {
  const { frame } = useFirstWords();
  const days = useDays();
  const leave = useOtherWorkbook(() => ask.workbook.closeWorkbook.mutate());
  return (
    <aside className="strip" aria-label={frame.demo}>
      <span>{frame.demoStrip(days.full(today))}</span>
      <Button variant="outlined" size="small" onClick={() => void leave.run(undefined)}>
        {frame.leaveDemo}
      </Button>
    </aside>
  );
}
