import type { OmittedPart } from '../../contract/print.ts';
import { type LabelSheet, labelsOnSheet } from '../../model/label-sheet.ts';
import type { print as english } from '../english/print.ts';
import type { Translation } from '../translation.ts';

const PARTS: Readonly<Record<OmittedPart, string>> = {
  brood: 'Kontrolle auf verdeckelte Brut',
  mother: 'Mutter',
  look: 'erste Kontrolle',
  colour: 'Jahresfarbe',
  pencilLine: 'Linie für den Bleistift',
};

export const print: Translation<typeof english> = {
  title: 'Drucken',
  labels: 'Etiketten für Begattungskästchen',
  what: 'Für',
  batch: (code: string, n: number) => `${code}, ${n} Kästchen`,
  unprinted: (n: number) => (n === 0 ? 'alle gedruckt' : `${n} noch nicht gedruckt`),
  which: 'Welche Etiketten',
  allLabels: (n: number) => (n === 1 ? 'das 1 Etikett' : `alle ${n} Etiketten`),
  waitingLabels: (n: number) => (n === 1 ? 'nur das 1 neue oder geänderte' : `nur die ${n} neuen oder geänderten`),
  changed: (n: number) =>
    n === 1 ? '1 Etikett stimmt seit dem Druck nicht mehr:' : `${n} Etiketten stimmen seit dem Druck nicht mehr:`,
  parts: {
    box: 'Kästchen',
    batch: 'Serie',
    mother: 'Mutter',
    yearColour: 'Jahresfarbe',
    handsOffUntil: 'Finger weg bis',
    firstLookOn: 'erste Kontrolle',
    sealedBroodLookOn: 'verdeckelte Brut',
  },
  changedPart: (part: string, was: string, now: string) => `${part} ${was} → ${now}`,
  changedLine: (boxes: string, changes: string) => `${boxes}: ${changes}`,
  sheet: 'Bogen',
  sheetName,
  startAt: 'Erstes freies Etikett',
  startHint: 'Klicken Sie auf das erste freie Etikett, oder geben Sie seine Nummer ein.',
  shows: 'Das Etikett zeigt',
  qr: 'Quadratischer Code',
  pencilLine: 'Linie für den Bleistift',
  outline: 'Umriss, für einfaches Papier',
  preview: 'Wie ein Etikett aussehen wird',
  tooSmallFor: (parts: readonly OmittedPart[]) =>
    `Dieses Etikett ist zu klein für: ${parts.map((part) => PARTS[part]).join(', ')}.`,
  save: 'Als PDF speichern',
  open: 'Zum Drucken öffnen',
  advice:
    'Wählen Sie im Druckfenster „Tatsächliche Größe“ oder „100 %“, nicht „An Seite anpassen“: Die Etiketten sind auf den Millimeter genau gezeichnet.',
  ready: (labels: number, pages: number) =>
    `${labels === 1 ? '1 Etikett' : `${labels} Etiketten`} auf ${pages === 1 ? '1 Seite' : `${pages} Seiten`}.`,
  pages: (pages: number) => (pages === 1 ? '1 Seite.' : `${pages} Seiten.`),
  saved: (path: string) => `Gespeichert als ${path}.`,
  notSaved: 'Die Datei konnte dort nicht geschrieben werden. Wählen Sie einen anderen Ordner.',
  downloaded: 'Die PDF-Datei liegt in Ihren Downloads.',
  empty: 'Keine Etiketten warten. Etiketten erscheinen, wenn Zellen in Kästchen gesetzt werden.',
  used: 'benutzt',
  free: 'frei',
  willPrint: 'wird gedruckt',
  labelN: (n: number, what: string) => `Etikett ${n}, ${what}`,
};

function sheetName(sheet: LabelSheet & { readonly name?: string }): string {
  const { columns, rows, labelWidth, labelHeight, paperWidth } = sheet;
  if (sheet.name !== undefined) return `${sheet.name}, ${columns} × ${rows}`;
  const millimetres = (side: number): string => String(Math.round(side * 10) / 10).replace('.', ',');
  const label = `${millimetres(labelWidth)} × ${millimetres(labelHeight)} mm`;
  if (sheet.key === 'roll-62') return 'Rolle, 62 mm breit, bei 40 mm geschnitten';
  if (labelsOnSheet(sheet) === 1) return `Rolle, Etiketten ${label}`;
  return `${paperWidth === 210 ? 'A4' : 'Letter'}, ${columns} × ${rows} Etiketten ${label}`;
}
