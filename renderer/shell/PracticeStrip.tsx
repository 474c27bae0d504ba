import { Button } from '@mui/material';
import { ask } from '../client/client.ts';
import { useOtherWorkbook } from '../client/hooks.ts';
import { goTo } from '../components/routes.ts';
import { useDays, useWords } from '../components/words.ts';

/** On every page of the practice workbook, so that nobody takes it for their own. */
export function PracticeStrip({ today }: { today: string }) {
  const { practice: words } = useWords();
  const days = useDays();
  const leave = useOtherWorkbook(() => ask.workbook.closeWorkbook.mutate());
  return (
    <aside className="strip" aria-label={words.title}>
      <span>{words.strip(days.full(today))}</span>
      <span className="acts">
        <Button variant="outlined" size="small" onClick={() => goTo('/class')}>
          {words.toReset}
        </Button>
        <Button variant="outlined" size="small" onClick={() => void leave.run(undefined)}>
          {words.leave}
        </Button>
      </span>
    </aside>
  );
}
