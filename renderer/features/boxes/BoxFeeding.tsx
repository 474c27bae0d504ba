import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { useTakeOut } from '../../client/taken-out.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { FeedingLines } from '../../components/FeedingLines.tsx';
import { useWords } from '../../components/words.ts';

/** What the box was fed; more is typed on the sheet for boxes. */
export function BoxFeeding({ boxId }: { boxId: string }) {
  const { feeding: words } = useWords();
  const asked = { place: 'box', id: boxId } as const;
  const feedings = useAnswer(['feedings', asked], () => ask.feeding.listFeedings.query(asked));
  const remove = useTakeOut(ask.feeding.removeFeeding.mutate);
  return (
    <>
      <h3>{words.list}</h3>
      <FeedingLines
        feedings={feedings.data ?? []}
        onRemove={(feedingId) => void remove.run({ feedingId })}
        busy={remove.state.busy}
      />
      <ChangeLines {...remove.state} />
      <p>
        <a href="#/boxes/feeding">{words.open}</a>
      </p>
    </>
  );
}
