import type { calibrationWords as EnglishCalibration, ownSheets as EnglishSheets } from '../english/calibration.ts';
import type { Translation } from '../translation.ts';

const signed = (value: number, digits: number): string => {
  const text = Math.abs(value).toFixed(digits).replace('.', ',');
  if (Number(value.toFixed(digits)) === 0) return text;
  return value < 0 ? `−${text}` : `+${text}`;
};

export const calibrationWords: Translation<typeof EnglishCalibration> = {
  title: 'Messseite',
  corrected: (printer: string) => `Messseite, berichtigt für ${printer}`,
  howTo: [
    'Drucken Sie diese Seite in „Tatsächlicher Größe“ oder mit „100 %“. Legen Sie ein Lineal an und lesen Sie vier Längen ab, wenn es geht auf einen Zehntelmillimeter:',
    '1. vom linken Rand des Papiers bis zum aufrechten Strich des Kreuzes (gezeichnet bei 20 mm),',
    '2. vom oberen Rand des Papiers bis zum liegenden Strich des Kreuzes (gezeichnet bei 20 mm),',
    '3. den liegenden Balken vom Kreuz bis zu seinem letzten Strich (gezeichnet 100 mm lang),',
    '4. den aufrechten Balken vom Kreuz bis zu seinem letzten Strich (gezeichnet 100 mm lang).',
    'Halten Sie diese Seite dann mit einem Etikettenbogen gegen das Licht: Die Umrisse zeigen, wohin die Etiketten gedruckt werden.',
  ],
  howToCheck: [
    'Wurde der Drucker gut gemessen, steht das Kreuz 20 mm von beiden Rändern, und beide Balken sind 100 mm lang.',
    'Halten Sie diese Seite mit einem Etikettenbogen gegen das Licht: Die Umrisse sollten auf den Etiketten liegen.',
  ],
  fileName: 'ripecell-messseite.pdf',
  section: 'Drucker',
  explain:
    'Jeder Drucker verschiebt und streckt ein wenig, und je Papierfach anders. Messen Sie ihn einmal, und alle Etikettenbögen berücksichtigen es.',
  printer: 'Drucker',
  notMeasured: 'nicht gemessen',
  measured: (on: string) => `gemessen am ${on}`,
  shift: (right: number, down: number) => `${signed(right, 1)} mm nach rechts, ${signed(down, 1)} mm nach unten`,
  stretch: (across: number, down: number) =>
    `${signed(100 * (across - 1), 2)} % quer, ${signed(100 * (down - 1), 2)} % längs`,
  page: 'Messseite speichern',
  check: 'Prüfseite speichern',
  remove: 'Diesen Drucker vergessen',
  add: 'Einen Drucker messen',
  name: 'Name von Drucker und Fach',
  nameHint: 'Etwa: Küche, hinteres Fach',
  fields: {
    crossFromLeft: 'Linker Rand bis Kreuz, mm',
    crossFromTop: 'Oberer Rand bis Kreuz, mm',
    barAcross: 'Liegender Balken, mm',
    barDown: 'Aufrechter Balken, mm',
  },
  save: 'Diese Werte behalten',
  unclear: 'Geben Sie eine Länge in Millimetern ein, etwa 20,4.',
};

export const ownSheets: Translation<typeof EnglishSheets> = {
  section: 'Eigene Etikettenbögen',
  explain:
    'Messen Sie einen Bogen, der nicht in der Liste steht, mit dem Lineal in Millimetern. Abstand ist der Weg vom linken Rand eines Etiketts zum linken Rand des nächsten, und ebenso nach unten. Drucken Sie zuerst einen Umriss auf einfaches Papier, und halten Sie ihn an den Bogen.',
  choose: 'Bogen',
  another: 'ein neuer Bogen',
  name: 'Name',
  fields: {
    paperWidth: 'Papier, Breite',
    paperHeight: 'Papier, Höhe',
    columns: 'Etiketten quer',
    rows: 'Etiketten längs',
    labelWidth: 'Etikett, Breite',
    labelHeight: 'Etikett, Höhe',
    left: 'Linker Rand bis zum ersten Etikett',
    top: 'Oberer Rand bis zum ersten Etikett',
    pitchX: 'Abstand quer',
    pitchY: 'Abstand längs',
  },
  unclear: 'Geben Sie eine Zahl von Millimetern ein, etwa 63,5.',
  save: 'Diesen Bogen behalten',
  remove: 'Diesen Bogen entfernen',
  saved: 'Behalten. Er steht oben in der Liste der Bögen.',
};
