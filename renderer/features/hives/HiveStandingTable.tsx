import type { HiveStageStanding } from '../../../shared/contract/forecast.ts';
import { perCent, perCentRange } from '../../../shared/text/share-text.ts';
import { DataTable } from '../../components/DataTable.tsx';
import { useWords } from '../../components/words.ts';

/** A hive in one of its parts against all the others, stage by stage, in words. */
export function HiveStandingTable({ title, standing }: { title: string; standing: readonly HiveStageStanding[] }) {
  const { forecast, season } = useWords();
  const words = forecast.hive;
  if (standing.length === 0) return null;
  const verdict = ({ against }: HiveStageStanding) =>
    against ? words[against.better === 'hive' ? 'hive' : 'others'][against.certainty] : words.nobody;
  return (
    <div style={{ marginTop: 14 }}>
      <h3>{words.title}</h3>
      <DataTable
        caption={`${title}: ${words.title}`}
        rows={standing}
        rowKey={(row) => row.stage}
        columns={[
          { key: 'stage', title: words.columns.stage, head: true, cell: (row) => season.stages[row.stage].name },
          {
            key: 'own',
            title: words.columns.own,
            cell: (row) => words.own(perCent(row.mean), perCentRange(row.lower, row.upper), row.batches),
          },
          {
            key: 'rest',
            title: words.columns.rest,
            cell: (row) => (row.against ? words.rest(perCent(row.otherMean), row.otherBatches) : words.nobody),
          },
          { key: 'verdict', title: words.columns.verdict, cell: verdict },
        ]}
      />
      <p className="soft small">{words.note}</p>
    </div>
  );
}
