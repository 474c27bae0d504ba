/** Words of the practice workbook: the strip above every page, and its place in Class. */
export const practice = {
  title: 'Practice workbook',
  strip: (day: string) =>
    `Practice workbook: an invented yard. Its clock stands still on ${day}; nothing here is real.`,
  toReset: 'Set it back…',
  leave: 'Leave it',
  line: 'An invented yard to work in: start batches, type counts and looks, print labels. It is a file of its own, apart from every real workbook, keeps what was typed, and can be set back to its start for the next pupil or the next lesson.',
  open: 'Open the practice workbook',
  here: 'You are in it now. What you type stays until it is set back.',
  askReset: 'Set it back to its start',
  whatGoes:
    'All that was typed in the practice workbook goes, and the invented yard is there as at its start. This cannot be undone. No other workbook is touched.',
  reset: 'Yes, set it back',
  isReset: 'The practice workbook is back at its start.',
  stays: 'The practice workbook stays here: every computer can make its own.',
} as const;
