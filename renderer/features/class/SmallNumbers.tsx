import { Button } from '@mui/material';
import { useState } from 'react';
import { type DrawnAnswer, OTHER_RANGES } from '../../../shared/contract/forecast.ts';
import { perCent, perCentRange } from '../../../shared/text/share-text.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useWords } from '../../components/words.ts';

/** Six made-up batches of twenty larvae. */
const EXAMPLE = ['18', '15', '13', '12', '9', '5'];
const MOST = 18;

/** Small numbers lie: type what batches took, and see how far each share is drawn towards the others. */
export function SmallNumbers() {
  const { classroom } = useWords();
  const words = classroom.smallNumbers;
  const [of, setOf] = useState('20');
  const [taken, setTaken] = useState<readonly string[]>(EXAMPLE);
  const rows = readRows(taken, of);
  const answer = useAnswer(
    ['drawn', rows],
    ({ signal }) => ask.season.previewDrawn.query({ rows: rows ?? [] }, { signal }),
    rows !== null,
  );
  const drawn = rows === null ? null : answer.data;
  return (
    <Section title={words.title}>
      <p style={{ marginBottom: 12 }}>{words.line}</p>
      <div style={{ maxWidth: 220, marginBottom: 12 }}>
        <TextField
          label={words.of}
          numeric
          value={of}
          onChange={setOf}
          problem={rows === null ? words.unclear : null}
        />
      </div>
      <div className="table-scroll">
        <table className="plain">
          <caption className="visually-hidden">{words.title}</caption>
          <thead>
            <tr>
              <th scope="col">{words.columns.taken}</th>
              <th scope="col">{words.columns.plain}</th>
              <th scope="col">{words.columns.byHand}</th>
              <th scope="col">{words.columns.evened}</th>
              <th scope="col">{words.columns.model}</th>
            </tr>
          </thead>
          <tbody>
            {taken.map((text, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: rows have no name but their place
              <tr key={index}>
                <td>
                  <input
                    className="control"
                    inputMode="numeric"
                    style={{ width: 72 }}
                    aria-label={words.takenOf(index + 1)}
                    value={text}
                    onChange={(event) => setTaken(taken.with(index, event.target.value))}
                  />
                </td>
                <DrawnCells row={drawn?.rows[index]} />
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <div className="acts" style={{ marginTop: 10 }}>
        <Button variant="outlined" disabled={taken.length >= MOST} onClick={() => setTaken([...taken, '10'])}>
          {words.more}
        </Button>
        <Button variant="outlined" disabled={taken.length <= 1} onClick={() => setTaken(taken.slice(0, -1))}>
          {words.fewer}
        </Button>
      </div>
      <p style={{ marginTop: 10 }}>{drawn ? words.lesson(drawn.kept) : ''}</p>
      {drawn ? <OtherRanges rows={drawn.rows} taken={taken} of={of} /> : null}
    </Section>
  );
}

type DrawnRow = DrawnAnswer['rows'][number];

/** The same batches, each with its range in the ways other tools draw it. */
function OtherRanges({ rows, taken, of }: { rows: readonly DrawnRow[]; taken: readonly string[]; of: string }) {
  const { classroom } = useWords();
  const words = classroom.smallNumbers.ranges;
  return (
    <Section title={words.title} level={3}>
      <div className="table-scroll">
        <table className="plain">
          <caption className="visually-hidden">{words.title}</caption>
          <thead>
            <tr>
              <th scope="col">{words.batch}</th>
              <th scope="col">{words.model}</th>
              {OTHER_RANGES.map((way) => (
                <th key={way} scope="col">
                  {words.ways[way]}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ model, others }, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: rows have no name but their place
              <tr key={index}>
                <th scope="row">{words.takenOf(taken[index]?.trim() ?? '', of.trim())}</th>
                {[model, ...OTHER_RANGES.map((way) => others[way])].map(({ lower, upper }, way) => (
                  <td key={['model', ...OTHER_RANGES][way]} className="nowrap">
                    {perCentRange(lower, upper)}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p style={{ marginTop: 10 }}>{words.why}</p>
    </Section>
  );
}

function DrawnCells({ row }: { row: DrawnRow | undefined }) {
  const share = (value: number | null | undefined) => (value === null || value === undefined ? '–' : perCent(value));
  return (
    <>
      <td>{share(row?.plain)}</td>
      <td>{share(row?.byHand)}</td>
      <td>{share(row?.byHandEvened)}</td>
      <td>
        {share(row?.model.mean)}{' '}
        <span className="soft small">{row ? perCentRange(row.model.lower, row.model.upper) : ''}</span>
      </td>
    </>
  );
}

/** null when a field holds no whole number, or more were taken than given. */
function readRows(taken: readonly string[], of: string) {
  const number = (text: string) => (/^\d{1,3}$/.test(text.trim()) ? Number(text) : null);
  const given = number(of);
  const rows = taken.map((text) => ({ successes: number(text), of: given }));
  const whole = rows.flatMap(({ successes, of: n }) =>
    successes === null || n === null || n < 1 || n > 200 || successes > n ? [] : [{ successes, of: n }],
  );
  return whole.length === rows.length ? whole : null;
}
