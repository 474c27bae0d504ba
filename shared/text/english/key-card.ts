/** Words on the card with the keys of the evening's typing. */
export const keyCard = {
  title: 'Keys',
  section: 'Key card',
  explain: 'The letters of the evening’s typing and the keys of the program, on one sheet to fold or to pin up.',
  save: 'Save the key card',
  results: 'What you saw: one key',
  columns: { key: 'Key', digit: 'Number pad', result: 'Result', meaning: 'Meaning', does: 'What it does' },
  fold: 'fold here',
  shortcuts: 'Keys of the program',
  shift: 'Shift with a result key gives the queen a number.',
  file: 'ripecell-keys.pdf',
} as const;
