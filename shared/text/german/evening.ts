import type { evening as english } from '../english/evening.ts';
import type { Translation } from '../translation.ts';

export const evening: Translation<typeof english> = {
  title: 'Was das ändert',
  nothing: 'Keine Arbeit und keine Ruhezeit ändert sich.',
  appeared: 'Neu',
  vanished: 'Erledigt oder nicht mehr nötig',
  fewer: 'Noch zu tun',
  shut: 'Von jetzt an in Ruhe lassen',
  freed: 'Darf wieder geöffnet werden',
  proposed: 'Das ginge',
  job: (what: string, batch: string, where: string, when: string) =>
    `${what}, ${batch}${where ? `, ${where}` : ''} (${when})`,
  expected: (day: string) => `erwartet ${day}`,
  leave: (what: string, day: string) => `${what} bis ${day}`,
  undoAll: 'Alles zurücknehmen',
  takenBack: (n: number) =>
    `${n === 1 ? '1 Änderung' : `${n} Änderungen`} zurückgenommen. Strg+Y wiederholt ${n === 1 ? 'sie' : 'sie, eine nach der anderen'}.`,
  backToToday: 'Zu Heute',
};
