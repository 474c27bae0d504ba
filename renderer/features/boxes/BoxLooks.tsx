import type { BoxLook } from '../../../shared/model/look.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { useTakeOut } from '../../client/taken-out.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { useDays, useWords } from '../../components/words.ts';

/** How many looks are in sight; older ones lie in a fold. */
const LATEST = 5;

/** What was seen in the box, newest first; more is typed on the sheet of looks. */
export function BoxLooks({ boxId }: { boxId: string }) {
  const { boxes: words } = useWords();
  const answer = useAnswer(['box-looks', boxId], () => ask.boxes.listLooks.query({ boxId }));
  const remove = useTakeOut(ask.boxes.removeLook.mutate);
  const looks = answer.data ?? [];
  const older = looks.slice(LATEST);
  const lines = (some: readonly BoxLook[]) => (
    <Lines looks={some} busy={remove.state.busy} onRemove={(lookId) => void remove.run({ lookId })} />
  );
  return (
    <>
      <h3>{words.looks}</h3>
      {looks.length === 0 ? <p className="soft">{words.noLooks}</p> : lines(looks.slice(0, LATEST))}
      {older.length > 0 ? (
        <details>
          <summary>{words.olderLooks(older.length)}</summary>
          {lines(older)}
        </details>
      ) : null}
      <ChangeLines {...remove.state} />
    </>
  );
}

interface LinesProps {
  readonly looks: readonly BoxLook[];
  readonly busy: boolean;
  readonly onRemove: (lookId: string) => void;
}

function Lines({ looks, busy, onRemove }: LinesProps) {
  const { boxes: words, looks: results } = useWords();
  const days = useDays();
  const textOf = ({ result, strength, food, note }: BoxLook) =>
    [
      results[result].name,
      strength === null ? null : `${words.sheet.columns.strength} ${strength}`,
      food === null ? null : `${words.sheet.columns.food} ${food}`,
      note,
    ]
      .filter(Boolean)
      .join(' · ');
  return (
    <dl className="facts" style={{ marginBottom: 10 }}>
      {looks.map((look) => (
        <div key={look.id} style={{ display: 'contents' }}>
          <dt className="nowrap">{days.dated(look.lookedOn)}</dt>
          <dd>
            {textOf(look)}{' '}
            <button
              type="button"
              className="as-text small no-print"
              disabled={busy}
              aria-label={words.removeLookOf(days.short(look.lookedOn), results[look.result].name)}
              onClick={() => onRemove(look.id)}
            >
              {words.removeLook}
            </button>
          </dd>
        </div>
      ))}
    </dl>
  );
}
