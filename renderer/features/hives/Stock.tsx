import { useState } from 'react';
import { STOCK_TEST_ROWS, TRAIT_ROWS } from '../../../shared/biology/stock-traits.ts';
import type { StockLine } from '../../../shared/contract/stock.ts';
import { STOCK_TRAITS } from '../../../shared/model/stock.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { Page } from '../../components/Page.tsx';
import { useToday, useWords } from '../../components/words.ts';
import { HoneyText } from './HoneyText.tsx';
import { inStockOrder, nextOrder, STOCK_COLUMNS, type StockColumn, type StockOrder } from './stock-order.ts';
import { TraitValue } from './TraitValue.tsx';

/** All hives side by side with their scores and tests; a press on a title orders the table by it. */
export function Stock() {
  const { stock: words, hives } = useWords();
  const [seasons, setSeasons] = useState('3');
  const list = useAnswer(['stock', seasons], () => ask.hives.listStock.query({ seasons: Number(seasons) }));
  const choice = (
    <ChoiceField
      label={words.seasons}
      value={seasons}
      choices={['1', '2', '3', '10'].map((value) => ({ value, text: words.seasonsN(Number(value)) }))}
      onChange={setSeasons}
    />
  );
  return (
    <Page lead={<a href="#/hives">{hives.title}</a>} title={words.title} acts={choice}>
      <p className="soft" style={{ marginBottom: 14 }}>
        {words.lead}
      </p>
      {list.data?.length === 0 ? <EmptyState title={words.empty} /> : null}
      {list.data && list.data.length > 0 ? <StockTable lines={list.data} /> : null}
      <ul className="soft small" style={{ marginTop: 16 }}>
        {words.footnotes.map((note) => (
          <li key={note}>{note}</li>
        ))}
      </ul>
    </Page>
  );
}

function StockTable({ lines }: { lines: readonly StockLine[] }) {
  const { stock: words } = useWords();
  const [order, setOrder] = useState<StockOrder>({ by: 'hive', turned: false });
  const titleOf = (column: StockColumn) =>
    column in words.traits ? words.traits[column as 'gentleness'].name : words.columns[column as 'hive'];
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that may scroll must be reachable by keyboard (WCAG 2.1.1)
    <div role="group" className="table-scroll" tabIndex={0} aria-label={words.title}>
      <table className="plain">
        <caption className="visually-hidden">{words.title}</caption>
        <thead>
          <tr>
            {STOCK_COLUMNS.map((column) => (
              <th
                key={column}
                scope="col"
                aria-sort={order.by === column ? (order.turned ? 'descending' : 'ascending') : undefined}
              >
                <button
                  type="button"
                  className="as-text"
                  aria-label={words.sortBy(titleOf(column))}
                  onClick={() => setOrder(nextOrder(order, column))}
                >
                  {titleOf(column)} {order.by === column ? (order.turned ? '▲' : '▼') : ''}
                </button>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {inStockOrder(lines, order).map((line) => (
            <StockRow key={line.id} line={line} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

function StockRow({ line }: { line: StockLine }) {
  const { stock: words } = useWords();
  return (
    <tr>
      <th scope="row" className="named">
        <a href={`#/hives/${line.id}`}>{[line.code, line.name].filter(Boolean).join(' ')}</a>
        <br />
        <span className="soft small">
          {[line.yard, line.breeder ? words.breeder : null].filter(Boolean).join(', ')}
        </span>
        {line.kin.map(({ code, how }) => (
          <div key={code} className="small line-notice">
            {words.kin[how](code)}
          </div>
        ))}
      </th>
      <td>{line.motherLine ?? ''}</td>
      <td>
        <QueenCell line={line} />
      </td>
      {STOCK_TRAITS.map((trait) => (
        <td key={trait}>
          <TraitValue figure={line.traits[trait]} fewest={TRAIT_ROWS[trait].fewest} />
        </td>
      ))}
      <td>
        <TraitValue
          figure={line.pin}
          fewest={STOCK_TEST_ROWS.pinTests.fewest}
          say={words.tests['pin-test'].figure}
          none={words.notTested}
        />
        {line.strictlyHygienic === null ? null : (
          <div className="small">{line.strictlyHygienic ? words.hygienic : words.notHygienic}</div>
        )}
      </td>
      <td>
        <TraitValue figure={line.mites} fewest={1} none={words.notTested} />
      </td>
      <td>
        <HoneyText honey={line.honey} />
      </td>
    </tr>
  );
}

function QueenCell({ line: { queen } }: { line: StockLine }) {
  const { stock: words } = useWords();
  const year = Number(useToday().slice(0, 4));
  if (!queen) return null;
  return (
    <>
      <a className="nowrap" href={`#/queens/${queen.id}`}>
        {queen.number}
      </a>
      <br />
      <span className="soft small">{words.age(year - queen.bornIn)}</span>
    </>
  );
}
