import { Button } from '@mui/material';
import type { ChangeState } from '../../client/hooks.ts';
import { useWords } from '../../components/words.ts';

/** Saves the form it stands in, and says so. */
export function SaveActs({ state }: { state: Pick<ChangeState, 'busy' | 'done'> }) {
  const { settings: words } = useWords();
  return (
    <div className="acts">
      <Button type="submit" variant="outlined" disabled={state.busy}>
        {words.save}
      </Button>
      {state.done ? (
        <span className="line-good" role="status">
          {words.saved}
        </span>
      ) : null}
    </div>
  );
}
