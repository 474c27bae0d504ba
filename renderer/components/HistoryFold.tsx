import type { RecordStep, RowChange } from '../../shared/contract/history.ts';
import { fieldName, fieldValue, rowName, stepSentence } from '../../shared/text/english/history.ts';
import { instantText } from '../../shared/text/instant-text.ts';
import { useDays, useWords } from './words.ts';

interface HistoryFoldProps {
  /** Missing until the fold is opened and answered. */
  readonly steps: readonly RecordStep[] | undefined;
  readonly onOpen: (open: boolean) => void;
}

/** What was changed in a batch, box or hive: when, what, and each value before and after. Folded until it is asked for. */
export function HistoryFold({ steps, onOpen }: HistoryFoldProps) {
  const { history } = useWords();
  const { order } = useDays();
  return (
    <details className="section" onToggle={(event) => onOpen(event.currentTarget.open)}>
      <summary>{history.ofThis}</summary>
      {steps?.length === 0 ? <p className="soft">{history.ofThisEmpty}</p> : null}
      {steps && steps.length > 0 ? (
        <ol className="record-history">
          {steps.map(({ step, rows }) => (
            <li key={step.id}>
              <p>
                <span className="soft small">{instantText(step.at, order)}</span> <strong>{stepSentence(step)}</strong>
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
  const { order } = useDays();
  const said = (field: string, value: string | number | null) => fieldValue(table, field, value, order);
  const values = fields.map(({ field, old, new: fresh }) => {
    const name = fieldName(table, field);
    if (what === 'added') return `${name} ${said(field, fresh)}`;
    if (what === 'removed') return `${name} ${said(field, old)}`;
    return `${name} ${history.fromTo(said(field, old), said(field, fresh))}`;
  });
  const which = about.map(({ field, value }) =>
    field === 'bar_id' ? `${fieldName(table, field)} ${value}` : said(field, value),
  );
  return (
    <>
      {[rowName(table), ...which].join(', ')}
      {what === 'changed' ? '' : ` ${history[what]}`}
      {values.length > 0 ? `: ${values.join('; ')}` : ''}
    </>
  );
}
