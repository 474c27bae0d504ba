import { Button } from '@mui/material';
import { ask } from '../../client/client.ts';
import { useTakeOut } from '../../client/taken-out.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { goTo } from '../../components/routes.ts';
import { useWords } from '../../components/words.ts';

/** For a batch that was started by mistake. Nothing is asked: the undo stands at the foot of the window. */
export function RemoveBatch({ batchId }: { batchId: string }) {
  const { one } = useWords().batches;
  const remove = useTakeOut(async (input: { readonly batchId: string }) => {
    const gone = await ask.batches.removeBatch.mutate(input);
    // Before anything is asked anew: this page would ask for a batch that is no longer there.
    if (gone.ok) goTo('/batches');
    return gone;
  });
  return (
    <div className="section acts">
      <Button disabled={remove.state.busy} onClick={() => void remove.run({ batchId })}>
        {one.removeBatch}
      </Button>
      <span className="soft small">{one.removeBatchHint}</span>
      <ChangeLines {...remove.state} />
    </div>
  );
}
