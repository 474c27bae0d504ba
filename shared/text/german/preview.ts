import type { preview as english } from '../english/preview.ts';
import type { Translation } from '../translation.ts';

export const preview: Translation<typeof english> = {
  look: 'Ansehen',
  title: (file: string) => `So wird ${file} aussehen`,
  opening: 'Wird geöffnet …',
  page: (page: number, pages: number) => `Seite ${page} von ${pages}`,
  previous: 'Seite davor',
  next: 'Nächste Seite',
  close: 'Schließen',
  failed: 'Die Seiten lassen sich hier nicht zeigen. Gespeichert öffnet jedes Programm für PDF die Datei.',
  picture: (page: number, pages: number, text: string) => `Seite ${page} von ${pages}. ${text}`,
};
