import type { practice as english } from '../english/practice.ts';
import type { Translation } from '../translation.ts';

export const practice: Translation<typeof english> = {
  title: 'Übungsbuch',
  strip: (day: string) => `Übungsbuch: ein erfundener Stand. Seine Uhr steht auf ${day}; nichts hier ist echt.`,
  toReset: 'Zurücksetzen …',
  leave: 'Verlassen',
  line: 'Ein erfundener Stand zum Arbeiten: Serien beginnen, Zahlen und Kontrollen eintragen, Etiketten drucken. Es ist eine eigene Datei, getrennt von jedem echten Arbeitsbuch, behält, was eingetragen wurde, und lässt sich für die nächste Teilnehmerin oder die nächste Stunde auf den Anfang zurücksetzen.',
  open: 'Übungsbuch öffnen',
  here: 'Sie sind gerade darin. Was Sie eintragen, bleibt, bis es zurückgesetzt wird.',
  askReset: 'Auf den Anfang zurücksetzen',
  whatGoes:
    'Alles, was im Übungsbuch eingetragen wurde, verschwindet, und der erfundene Stand ist wieder da wie am Anfang. Das lässt sich nicht rückgängig machen. Kein anderes Arbeitsbuch wird berührt.',
  reset: 'Ja, zurücksetzen',
  isReset: 'Das Übungsbuch steht wieder am Anfang.',
  stays: 'Das Übungsbuch bleibt hier: Jeder Rechner kann sich ein eigenes machen.',
};
