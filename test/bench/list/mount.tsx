// Mounts ten thousand rows as the program's own table, or as the community data grid with its largest page, and tells how
// long React took with them until the browser had laid them out.
import { DataGrid } from '@mui/x-data-grid';
import { flushSync } from 'react-dom';
import { createRoot } from 'react-dom/client';
import { DataTable } from '../../../renderer/components/DataTable.tsx';
import type { Column } from '../../../renderer/components/PlainTable.tsx';
import '../../../renderer/theme/page.css';

interface Row {
  readonly id: number;
  readonly cells: readonly string[];
}

export interface Mounted {
  readonly milliseconds: number;
  readonly nodes: number;
}

declare global {
  interface Window {
    mount(what: 'own' | 'grid'): Promise<Mounted>;
  }
}

/** A register of queens as it would be after many years: eight columns. */
const COLUMNS = ['number', 'colour', 'mother', 'batch', 'eggs', 'proved', 'place', 'note'] as const;
const ROWS: readonly Row[] = Array.from({ length: 10_000 }, (_, id) => ({
  id,
  cells: COLUMNS.map((column) => `${column} ${id}`),
}));
/** The community edition shows at most a hundred rows a page. */
const LARGEST_PAGE = 100;

const ownColumns: readonly Column<Row>[] = COLUMNS.map((key, index) => ({
  key,
  title: key,
  head: index === 0,
  cell: (row) => row.cells[index],
}));
const gridColumns = COLUMNS.map((field, index) => ({
  field,
  width: 140,
  valueGetter: (_: unknown, row: Row) => row.cells[index],
}));

const tables = {
  own: () => <DataTable caption="Queens" rows={ROWS} columns={ownColumns} rowKey={(row) => String(row.id)} />,
  grid: () => (
    <div style={{ height: 700 }}>
      <DataGrid
        rows={[...ROWS]}
        columns={gridColumns}
        initialState={{ pagination: { paginationModel: { pageSize: LARGEST_PAGE } } }}
        pageSizeOptions={[LARGEST_PAGE]}
      />
    </div>
  ),
};

window.mount = async (what) => {
  const place = document.createElement('div');
  document.getElementById('root')?.replaceChildren(place);
  const root = createRoot(place);
  const from = performance.now();
  flushSync(() => root.render(tables[what]()));
  // Reading a height makes the browser lay the rows out; two frames later what effects asked for is drawn as well.
  void place.offsetHeight;
  await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
  const milliseconds = performance.now() - from;
  const nodes = place.querySelectorAll('*').length;
  root.unmount();
  return { milliseconds, nodes };
};
