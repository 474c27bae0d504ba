/** Words around a paper that is looked at in the window. */
export const preview = {
  look: 'Look at it',
  title: (file: string) => `How ${file} will look`,
  opening: 'Opening…',
  page: (page: number, pages: number) => `page ${page} of ${pages}`,
  previous: 'Page before',
  next: 'Next page',
  close: 'Close',
  failed: 'The pages cannot be shown here. Saved, the file opens in any program for PDF.',
  picture: (page: number, pages: number, text: string) => `Page ${page} of ${pages}. ${text}`,
} as const;
