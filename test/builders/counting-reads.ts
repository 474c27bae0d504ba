import type { Desk } from '../../main/operations/operation.ts';
import type { Tables } from '../../main/workbook/workbook.ts';

/** The same desk, counting the rows that each table hands out; of kept sums, the rows they are made of. */
export function countingReads(desk: Desk): { readonly reading: Desk; rowsRead(): Readonly<Record<string, number>> } {
  const read: Record<string, number> = {};
  const add = (name: string, rows: number) => {
    if (rows > 0) read[name] = (read[name] ?? 0) + rows;
  };
  const watched = (name: string, table: object): object =>
    new Proxy(table, {
      get: (target, method: string) => {
        const of = Reflect.get(target, method);
        return typeof of !== 'function'
          ? of
          : (...input: readonly unknown[]) => {
              const answer = of(...input);
              if (name !== 'seasonSums') add(name, Array.isArray(answer) ? answer.length : answer ? 1 : 0);
              else if (method === 'sums') add(name, desk.workbook.tables.seasonSums.kept(String(input[0])));
              return answer;
            };
      },
    });
  const tables = Object.fromEntries(
    Object.entries(desk.workbook.tables).map(([name, table]) => [name, watched(name, table)]),
  ) as unknown as Tables;
  return {
    reading: { ...desk, workbook: { ...desk.workbook, tables } },
    rowsRead: () => {
      const so = { ...read };
      for (const name of Object.keys(read)) delete read[name];
      return so;
    },
  };
}
