import type { weather as english } from '../english/weather.ts';
import type { Translation } from '../translation.ts';

export const weather: Translation<typeof english> = {
  title: 'Flugwetter',
  line: 'Junge Königinnen fliegen an warmen, sonnigen Tagen mit wenig Wind zur Begattung, 11 bis 16 Uhr. Vermerken Sie, wie die Tage bei den Kästchen waren; leer heißt nicht vermerkt. Tage, an denen keine Königin fliegen konnte, schieben die Warnung vor später Begattung hinaus.',
  fromFile: 'Übernehmen Sie unter Dateien die Tabelle einer Wetterstation.',
  columns: {
    day: 'Tag',
    maxCelsius: 'Höchste',
    windKmh: 'Wind, km/h',
    rain: 'Regen, 11 bis 16 Uhr',
    flyingHours: 'Gute Flugstunden',
    rating: 'Für Flüge',
  },
  rains: { unknown: '', yes: 'ja', no: 'nein' },
  ratings: { good: 'gut', possible: 'möglich', poor: 'schlecht', unknown: 'nicht vermerkt' },
  field: (what: string, day: string) => `${what}, ${day}`,
  problems: {
    maxCelsius: 'Höchste: Geben Sie Grad ein, etwa 21,5, oder lassen Sie das Feld leer.',
    windKmh: 'Wind: Geben Sie Kilometer in der Stunde ein, 0 bis 200, oder lassen Sie das Feld leer.',
    flyingHours: 'Gute Flugstunden: Geben Sie Stunden ein, 0 bis 5, oder lassen Sie das Feld leer.',
  },
  hint: 'Eine Zeile wird gespeichert, wenn Sie sie verlassen.',
  allDays: 'Alle Tage',
  flights: (from: string, to: string) => `Begattungsflüge ${from} bis ${to}.`,
  sofar: (parts: string) => `Bisher ${parts}.`,
  days: {
    good: (n: number) => `${n} gut`,
    possible: (n: number) => `${n} möglich`,
    poor: (n: number) => `${n} schlecht`,
    unknown: (n: number) => `${n} nicht vermerkt`,
  },
  late: (day: string) => `Spät ab ${day}.`,
  putOff: (days: number, day: string) =>
    `Schlechte Tage schieben die Warnung vor später Begattung um ${days === 1 ? 'einen Tag' : `${days} Tage`} hinaus, auf ${day}.`,
};
