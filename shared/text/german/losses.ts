import type { LossReason, LossStage } from '../../model/loss.ts';
import type { losses as english } from '../english/losses.ts';
import type { Translation } from '../translation.ts';

export const losses = {
  title: 'Verluste',
  line: 'Sagen Sie, warum, wo Sie es wissen; was keinen Grund hat, bleibt unbekannt.',
  seasonTitle: 'Warum Zellen und Königinnen verloren gingen',
  seasonLine:
    'Nur was auf der Seite einer Serie gesagt wurde, und die Drohnenbrütigen, die zu sehen waren. Verluste ohne Grund bleiben, wie sie sind, und werden nicht aufgeteilt.',
  columns: { stage: 'Stufe', lost: 'Verloren', known: 'Mit Grund', reasons: 'Gründe' },
  stages: {
    taken: 'nicht angenommen',
    sealed: 'nicht verdeckelt',
    emerged: 'nicht geschlüpft',
    proved: 'geschlüpft, aber nicht erwiesen',
  } satisfies Record<LossStage, string>,
  reasons: {
    'builder-not-ready': 'Pflegevolk nicht bereit',
    'larvae-harmed': 'Larven verletzt oder vertrocknet',
    drowned: 'ertrunken oder nass',
    chilled: 'verkühlt',
    starved: 'verhungert',
    'torn-down': 'von einer Jungkönigin oder den Bienen ausgebissen',
    'dead-in-cell': 'tot in der Zelle',
    damaged: 'gestoßen oder gedrückt',
    'mating-flight': 'auf dem Begattungsflug verloren',
    killed: 'von den Bienen getötet',
    absconded: 'mit den Bienen ausgezogen',
    robbed: 'ausgeraubt, oder Wespen',
    other: 'ein anderer Grund',
  } satisfies Record<LossReason, string>,
  droneLayers: 'drohnenbrütig',
  count: (reason: string, n: number) => `${reason} ${n}`,
  lostOf: (lost: number, of: number) => `${lost} von ${of}`,
  unknown: (n: number) => `Grund nicht bekannt ${n}`,
  known: (known: number, lost: number) => `${known} von ${lost}`,
  none: 'kein Grund genannt',
  tooMany: (n: number) =>
    `${n === 1 ? '1 Grund ist' : `${n} Gründe sind`} mehr, als verloren ging, weil eine Zahl berichtigt wurde. Berichtigen Sie die Gründe.`,
  stage: 'Auf welcher Stufe',
  reason: 'Warum',
  cells: 'Wie viele',
  cellsHint: 'Derselbe Grund noch einmal berichtigt; 0 nimmt ihn zurück.',
  save: 'Grund speichern',
} satisfies Translation<typeof english>;
