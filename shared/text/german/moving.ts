import type { moving as english } from '../english/moving.ts';
import type { Translation } from '../translation.ts';

export const moving: Translation<typeof english> = {
  title: 'Auf einen anderen Rechner umziehen',
  explain:
    'Packt das Arbeitsbuch, seine Einstellungen und seine neuesten Sicherungen in eine Datei. Tragen Sie sie hinüber, und öffnen Sie sie dort, wie Sie ein Arbeitsbuch öffnen.',
  folder: 'Ablegen in',
  make: 'Paket machen',
  made: (file: string, copies: number) =>
    `${file} ist fertig, mit ${copies === 1 ? '1 Sicherung' : `${copies} Sicherungen`}. Schreiben Sie von jetzt an nur auf einem Rechner: Zwei Arbeitsbücher lassen sich nicht wieder zusammenführen.`,
  noDemo: 'Die Vorführung bleibt hier: Jeder Rechner kann sich eine eigene machen.',
};
