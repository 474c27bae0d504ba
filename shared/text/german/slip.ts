import type { slip as english } from '../english/slip.ts';
import type { Translation } from '../translation.ts';

export const slip: Translation<typeof english> = {
  title: (batch: string) => `${batch}: was sich dadurch verschiebt`,
  nothing: 'Kein offener Tag verschiebt sich.',
  moves: (n: number) =>
    n === 1 ? 'Ein offener Schritt bekommt einen anderen Tag.' : `${n} offene Schritte bekommen andere Tage.`,
  columns: { step: 'Schritt', was: 'War', becomes: 'Wird' },
  done: 'erledigt, bleibt',
  stays: 'bleibt',
  none: 'keiner',
  by: (days: number) => (days === 0 ? 'andere Spanne' : days > 0 ? `+${days}` : `−${-days}`),
  labels: (n: number, codes: string) =>
    `${n === 1 ? 'Ein gedrucktes Etikett wird' : `${n} gedruckte Etiketten werden`} nicht mehr stimmen: ${codes}. Drucken Sie sie unter Drucken neu.`,
  entries: (n: number) =>
    `${n === 1 ? 'Ein Termin' : `${n} Termine`} in der Kalenderdatei, die Sie gemacht haben, ${n === 1 ? 'wird' : 'werden'} nicht mehr stimmen. Machen Sie sie unter Dateien neu.`,
  contradiction: 'Diese schließen einander aus; bis Sie eine zurücknehmen, gilt der frühere, sicherere Tag:',
  fact: {
    step: (title: string, day: string) => `„${title}“ am ${day}`,
    age: (from: number, to: number, day: string) => `Larven ${from} bis ${to} Stunden alt am ${day}`,
    seen: (what: string, day: string) => `${what} am ${day}`,
  },
  back: 'Zurück',
  confirm: 'Speichern und die Tage verschieben',
};
