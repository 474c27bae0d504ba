import type { BatchDetail } from '../../../shared/contract/batches.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { DataTable } from '../../components/DataTable.tsx';
import { Section } from '../../components/Section.tsx';
import { useWords } from '../../components/words.ts';

/** This batch against what its method led one to expect, and the queens still to come; fills in when it is reckoned. */
export function BatchExpected({ batch }: { batch: BatchDetail }) {
  const words = useWords();
  const { forecast, season } = words;
  const { batch: texts } = forecast;
  const { tally } = batch;
  const answer = useAnswer(['batch-expectation', batch.id, tally], ({ signal }) =>
    ask.season.getBatchExpectation.query({ batchId: batch.id }, { signal }),
  );
  const { stages = [], toCome = null, bars = null } = answer.data ?? {};
  if (stages.length === 0 && toCome === null) return null;
  const barText = bars && texts.bar[bars.stage];
  const method = batch.methodName ?? words.methods[batch.method].name;
  return (
    <Section title={texts.title}>
      {stages.length > 0 ? (
        <>
          <DataTable
            caption={texts.title}
            rows={stages}
            rowKey={(row) => row.stage}
            columns={[
              { key: 'stage', title: texts.columns.stage, head: true, cell: (row) => season.stages[row.stage].name },
              { key: 'came', title: texts.columns.came, cell: (row) => texts.came(row.came, row.of) },
              { key: 'expected', title: texts.columns.expected, cell: (row) => texts.expected(row.expected) },
              { key: 'verdict', title: texts.columns.verdict, cell: (row) => texts.standing[row.standing] },
            ]}
          />
          <p className="soft small">{texts.restsOn(method, Math.max(...stages.map((row) => row.batches)))}</p>
        </>
      ) : null}
      {bars && barText ? (
        <p className="line-notice">
          {texts.bars(
            barText(bars.better.number, bars.better.came, bars.better.of),
            barText(bars.worse.number, bars.worse.came, bars.worse.of),
          )}
        </p>
      ) : null}
      {toCome ? (
        <p>
          {texts.toCome[toCome.from](toCome.of)}: {texts.queens(toCome.proved)}
        </p>
      ) : null}
    </Section>
  );
}
