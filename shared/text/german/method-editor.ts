import type { methodEditor as english } from '../english/method-editor.ts';
import type { Translation } from '../translation.ts';

export const methodEditor: Translation<typeof english> = {
  title: 'Verfahren',
  line: 'Kopieren Sie ein Verfahren und setzen Sie seine Tage, wie Sie es machen. Der letzte sichere Tag zum Versetzen der Zellen ist von den Bienen her gerechnet und bleibt.',
  choose: 'Verfahren',
  copyOf: (name: string, origin: string) => `${name} (eigenes, nach ${origin})`,
  name: 'Name Ihrer Kopie',
  nameDefault: (origin: string) => `Mein ${origin}`,
  columns: {
    step: 'Schritt',
    builtIn: 'Vorgegeben',
    earliest: 'Frühestens',
    expected: 'Erwartet',
    latest: 'Spätestens',
  },
  days: 'Tage zählen vom Tag der Larvengabe; davor sind sie negativ.',
  window: (earliest: number, expected: number, latest: number) =>
    earliest === latest ? `${expected}` : `${expected} (${earliest} bis ${latest})`,
  day: (step: string, which: string) => `${step}, ${which}`,
  ownTitle: (builtIn: string) => `Ihr Name für „${builtIn}“`,
  ownNote: (builtIn: string) => `Ihre Notiz, gezeigt bei „${builtIn}“`,
  differences: (origin: string) => `Was von ${origin} abweicht`,
  noDifference: 'Nichts: Tage, Namen und Texte sind wie vorgegeben.',
  otherDays: (was: string, own: string) => `Tag ${was} → ${own}`,
  otherName: (title: string) => `heißt „${title}“`,
  addedNote: (note: string) => `Notiz „${note}“`,
  save: 'Als eigenes speichern',
  saveChanges: 'Mein Verfahren speichern',
  saved: 'Gespeichert. Es wird angeboten, wenn Sie eine Serie beginnen.',
};
