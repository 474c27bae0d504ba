import type { Job } from '../../../shared/contract/today.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { Page } from '../../components/Page.tsx';
import { useWords } from '../../components/words.ts';
import { StepGrid } from './StepGrid.tsx';

/** The evening's typing for jobs without a count: feeding, making queenless, setting out, and the like. */
export function StepSheet() {
  const { today: words } = useWords();
  const view = useAnswer(['today'], () => ask.today.getToday.query());
  const jobs: readonly Job[] = view.data ? [...view.data.late, ...view.data.due, ...view.data.early] : [];
  const marked = jobs.filter((job) => job.opens === 'mark');
  return (
    <Page lead={<a href="#/today">{words.title}</a>} title={words.steps.title}>
      {view.data ? <StepGrid now={marked} /> : null}
    </Page>
  );
}
