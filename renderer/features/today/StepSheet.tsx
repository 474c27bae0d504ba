import type { Job } from '../../../shared/contract/today.ts';
import { ask } from '../../client/client.ts';
import { useDrafts, useKeeping } from '../../client/drafts.ts';
import { useAnswer } from '../../client/hooks.ts';
import { Page } from '../../components/Page.tsx';
import { goTo } from '../../components/routes.ts';
import { SheetDrafts } from '../../components/SheetDrafts.tsx';
import { useWords } from '../../components/words.ts';
import { StepGrid } from './StepGrid.tsx';
import { halfTypedNotes, jobId } from './step-typing.ts';

/** The evening's typing for jobs without a count: feeding, making queenless, setting out, and the like. */
export function StepSheet() {
  const { today: words } = useWords();
  const view = useAnswer(['today'], () => ask.today.getToday.query());
  const drafts = useDrafts();
  const jobs: readonly Job[] = view.data ? [...view.data.late, ...view.data.due, ...view.data.early] : [];
  const marked = jobs.filter((job) => job.opens === 'mark');
  return (
    <Page lead={<a href="#/today">{words.title}</a>} title={words.steps.title}>
      <NotesElsewhere open={marked.map(jobId)} />
      {view.data && drafts.list ? <StepGrid now={marked} /> : null}
    </Page>
  );
}

/** Notes half typed for jobs that are no longer open: read here, typed again on the batch's page, or forgotten. */
function NotesElsewhere({ open }: { open: readonly string[] }) {
  const { stepTitles } = useWords();
  const { list } = useDrafts();
  const keep = useKeeping();
  const batches = useAnswer(['batches'], () => ask.batches.listBatches.query());
  const notes = halfTypedNotes(list ?? {}, open);
  const code = (id: string) => batches.data?.find((batch) => batch.id === id)?.code;
  return (
    <SheetDrafts
      sheets={batches.data ? notes.filter(({ batchId }) => code(batchId)) : []}
      text={({ batchId, step, note }) => [code(batchId), stepTitles[step], `“${note}”`].join(', ')}
      onShow={({ batchId }) => goTo(`/batches/${batchId}`)}
      onForget={({ key }) => keep(key, null)}
    />
  );
}
