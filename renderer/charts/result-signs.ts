/** One sign a result, told apart by shape alone; the word stands in the table and in the sign's title. */
const SIGNS: Readonly<Record<string, string>> = {
  laying: '●',
  proved: '◉',
  virgin: '∿',
  queen: '∿',
  out: '○',
  cell: '◐',
  none: '✕',
  gone: '✕',
  'drone-layer': '✕',
  'cell-failed': '✕',
};

export const resultSign = (result: string | null): string => (result === null ? '·' : (SIGNS[result] ?? '·'));
