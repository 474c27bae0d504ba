import type { StageLoss } from '../../shared/model/loss.ts';
import { DataTable } from './DataTable.tsx';
import { useWords } from './words.ts';

/** Stage by stage what was lost, how much of it has a reason, and which. */
export function LossTable({ caption, stages }: { caption: string; stages: readonly StageLoss[] }) {
  const { losses: words } = useWords();
  return (
    <DataTable
      caption={caption}
      rows={stages}
      rowKey={(line) => line.stage}
      columns={[
        { key: 'stage', title: words.columns.stage, head: true, cell: (line) => words.stages[line.stage] },
        {
          key: 'lost',
          title: words.columns.lost,
          cell: (line) => <span className="nowrap">{words.lostOf(line.lost, line.of)}</span>,
        },
        {
          key: 'known',
          title: words.columns.known,
          cell: (line) => <span className="nowrap">{words.known(line.lost - line.unknown, line.lost)}</span>,
        },
        { key: 'reasons', title: words.columns.reasons, cell: (line) => <Reasons line={line} /> },
      ]}
    />
  );
}

function Reasons({ line }: { line: StageLoss }) {
  const { losses: words } = useWords();
  const { reasons, droneLayers, unknown, lost, tooMany } = line;
  const said = [
    ...reasons.map(({ reason, cells }) => words.count(words.reasons[reason], cells)),
    ...(droneLayers > 0 ? [words.count(words.droneLayers, droneLayers)] : []),
    ...(unknown > 0 && unknown < lost ? [words.unknown(unknown)] : []),
  ];
  return (
    <>
      {said.length === 0 ? <span className="soft">{words.none}</span> : said.join(', ')}
      {tooMany > 0 ? <p className="line-notice">{words.tooMany(tooMany)}</p> : null}
    </>
  );
}
