/** Words of the section that packs the workbook for another computer. */
export const moving = {
  title: 'Move to another computer',
  explain:
    'Packs the workbook, its settings and its newest safety copies into one file. Carry it over, and open it there as you would open a workbook.',
  folder: 'Put it in',
  make: 'Make the package',
  made: (file: string, copies: number) =>
    `${file} is ready, with ${copies === 1 ? '1 safety copy' : `${copies} safety copies`}. From now on write on one computer only: two workbooks are not joined again.`,
  noDemo: 'The demo stays here: every computer can make its own.',
} as const;
