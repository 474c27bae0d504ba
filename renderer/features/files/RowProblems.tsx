import type { TablePreview } from '../../../shared/contract/import.ts';
import { DataTable } from '../../components/DataTable.tsx';
import { useSentences, useWords } from '../../components/words.ts';

interface RowProblemsProps {
  readonly preview: TablePreview;
  readonly leaveOut: boolean;
  readonly setLeaveOut: (leaveOut: boolean) => void;
}

/** Row by row what is wrong and what helps; and the choice to leave such rows out. */
export function RowProblems({ preview, leaveOut, setLeaveOut }: RowProblemsProps) {
  const say = useSentences();
  const { tablesIn: words } = useWords();
  if (preview.problemRows === 0) return null;
  const problems = preview.problems.map((problem, index) => ({ problem, key: `${index} ${problem.row}` }));
  return (
    <>
      <DataTable
        caption={words.problem}
        rows={problems}
        rowKey={({ key }) => key}
        columns={[
          { key: 'row', title: words.problemRow, head: true, cell: ({ problem }) => problem.row },
          { key: 'what', title: words.problem, cell: ({ problem }) => say.rowProblem(problem) },
        ]}
      />
      <p>{words.moreProblems(preview.problemRows)}</p>
      <label className="check" style={{ minHeight: 40 }}>
        <input type="checkbox" checked={leaveOut} onChange={(event) => setLeaveOut(event.target.checked)} />
        {words.leaveOut}
      </label>
    </>
  );
}
