/** Words on the papers of the class besides the timetable. */
export const classPapers = {
  glossary: {
    section: 'Words on paper',
    title: 'Words of queen rearing',
    columns: { word: 'Word', meaning: 'Meaning' },
    save: 'Save the words',
    file: 'ripecell-words.pdf',
  },
  foot: 'For the class; no data of anybody',
} as const;
