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
  backToToday: 'Zu Heute',
};
