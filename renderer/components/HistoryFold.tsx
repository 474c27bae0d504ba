import type { RecordStep, RowChange } from '../../shared/contract/history.ts';
import { useDays, useSentences, useWords } from './words.ts';

interface HistoryFoldProps {
  /** Missing until the fold is opened and answered. */
  readonly steps: readonly RecordStep[] | undefined;
  readonly onOpen: (open: boolean) => void;
}

/** What was changed in a batch, box or hive: when, what, and each value before and after. Folded until it is asked for. */
export function HistoryFold({ steps, onOpen }: HistoryFoldProps) {
  const { history, settings } = useWords();
  const days = useDays();
  const say = useSentences();
  return (
    <details className="section" onToggle={(event) => onOpen(event.currentTarget.open)}>
      <summary>{history.ofThis}</summary>
      {steps?.length === 0 ? <p className="soft">{history.ofThisEmpty}</p> : null}
      {steps && steps.length > 0 ? (
        <ol className="record-history">
          {steps.map(({ step, rows }) => (
            <li key={step.id}>
              <p>
                <span className="soft small">{days.instant(step.at)}</span> <strong>{say.historyStep(step)}</strong>
                {step.typedBy === null ? null : <span className="soft small">, {settings.typedBy(step.typedBy)}</span>}
                {step.undone ? <span className="soft small"> ({history.takenBack})</span> : null}
              </p>
              <ul>
                {rows.map((row) => (
                  <li key={row.id}>
                    <RowLine row={row} />
                  </li>
                ))}
              </ul>
            </li>
          ))}
        </ol>
      ) : null}
    </details>
  );
}

function RowLine({ row: { table, what, fields, about } }: { row: RowChange }) {
  const { history } = useWords();
  const say = useSentences();
  const said = (field: string, value: string | number | null) => say.value(table, field, value);
  const values = fields.map(({ field, old, new: fresh }) => {
    const name = say.field(table, field);
    if (what === 'added') return `${name} ${said(field, fresh)}`;
    if (what === 'removed') return `${name} ${said(field, old)}`;
    return `${name} ${history.fromTo(said(field, old), said(field, fresh))}`;
  });
  const which = about.map(({ field, value }) =>
    field === 'bar_id' ? `${say.field(table, field)} ${value}` : said(field, value),
  );
  return (
    <>
      {[say.row(table), ...which].join(', ')}
      {what === 'changed' ? '' : ` ${history[what]}`}
      {values.length > 0 ? `: ${values.join('; ')}` : ''}
    </>
  );
}
