import {
  IMPORT_FIELDS,
  type ImportField,
  type ImportKind,
  type TablePreview,
} from '../../../shared/contract/import.ts';
import { useWords } from '../../components/words.ts';

interface MatchColumnsProps {
  readonly preview: TablePreview;
  readonly kind: ImportKind;
  readonly setColumns: (columns: (ImportField | null)[]) => void;
}

const LEAVE = '';

/** The first rows of the file, and above each column what it is taken for. */
export function MatchColumns({ preview, kind, setColumns }: MatchColumnsProps) {
  const { tablesIn: words, importFields } = useWords();
  const fields: readonly ImportField[] = IMPORT_FIELDS[kind];
  const columns = preview.headings.map((heading, index) => ({ heading, index, key: `${index} ${heading}` }));
  const set = (at: number, typed: string) => {
    const chosen = fields.find((field) => field === typed) ?? null;
    // A field is filled from one column.
    setColumns(preview.columns.map((field, index) => (index === at ? chosen : field === chosen ? null : field)));
  };
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that may scroll must be reachable by keyboard (WCAG 2.1.1)
    <div role="group" className="table-scroll" tabIndex={0} aria-label={words.columns}>
      <table className="plain">
        <caption className="visually-hidden">{words.preview}</caption>
        <thead>
          <tr>
            <th scope="col">{words.problemRow}</th>
            {columns.map(({ heading, index, key }) => (
              <th key={key} scope="col">
                <label>
                  {heading}
                  <select
                    className="control"
                    style={{ minWidth: '9rem' }}
                    value={preview.columns[index] ?? LEAVE}
                    onChange={(event) => set(index, event.target.value)}
                  >
                    <option value={LEAVE}>{words.leave}</option>
                    {fields.map((field) => (
                      <option key={field} value={field}>
                        {importFields[field]}
                      </option>
                    ))}
                  </select>
                </label>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {preview.rows.slice(0, SHOWN).map((row) => (
            <tr key={row.number}>
              <th scope="row">{row.number}</th>
              {columns.map(({ index, key }) => (
                <td key={key}>{row.cells[index] ?? ''}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

const SHOWN = 6;
